namespace ClassKit.CellFormulas.Syntax;

/// <summary>What can stand where a formula stops making sense.</summary>
public enum SyntaxFoundKind
{
    /// <summary>The end of the formula.</summary>
    End,

    /// <summary>More text than a formula may have.</summary>
    MoreText,

    /// <summary>One more level than parts may lie in one another.</summary>
    OneMoreLevel,

    /// <summary>A number.</summary>
    Number,

    /// <summary>A text in quotes.</summary>
    Text,

    /// <summary>A reference to a cell.</summary>
    Reference,

    /// <summary>A name.</summary>
    Name,

    /// <summary>A function.</summary>
    Function,

    /// <summary>A sheet.</summary>
    Sheet,

    /// <summary>A semicolon, which some programs show between arguments and no file has there.</summary>
    Semicolon,

    /// <summary>Anything else, as written.</summary>
    Sign,

    /// <summary>A sign for times that is none in a formula.</summary>
    TimesSign,

    /// <summary>A sign for divided by that is none in a formula.</summary>
    DivisionSign,

    /// <summary>A dash in the place of a minus.</summary>
    Dash,

    /// <summary>A quotation mark of print.</summary>
    PrintedQuote,

    /// <summary>An exclamation mark without a sheet before it.</summary>
    NoSheetBefore,

    /// <summary>A number larger than a cell can hold.</summary>
    NumberTooLarge,

    /// <summary>A text without its closing quotation mark.</summary>
    OpenText,

    /// <summary>A sheet's name without its closing quotation mark.</summary>
    OpenSheetName,

    /// <summary>A sheet's name without the exclamation mark after it.</summary>
    SheetWithoutMark,

    /// <summary>A bracket without the one that closes it.</summary>
    OpenBracket,
}
