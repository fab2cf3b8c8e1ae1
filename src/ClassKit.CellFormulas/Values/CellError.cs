namespace ClassKit.CellFormulas.Values;

/// <summary>The error values of a spreadsheet cell.</summary>
/// <remarks>Source: ECMA-376 Part 1, 18.17.3 (error values); the numbers are those of ERROR.TYPE.</remarks>
public enum CellError
{
    /// <summary><c>#NULL!</c>: an intersection of ranges that do not meet.</summary>
    Null = 1,

    /// <summary><c>#DIV/0!</c>: a division by zero or by a blank cell.</summary>
    DivideByZero = 2,

    /// <summary><c>#VALUE!</c>: an operand or argument of the wrong kind.</summary>
    Value = 3,

    /// <summary><c>#REF!</c>: a reference to a cell that is not there.</summary>
    Reference = 4,

    /// <summary><c>#NAME?</c>: a name that is not defined.</summary>
    Name = 5,

    /// <summary><c>#NUM!</c>: a number outside what a function accepts or a cell can hold.</summary>
    Number = 6,

    /// <summary><c>#N/A</c>: no value available.</summary>
    NotAvailable = 7,
}
