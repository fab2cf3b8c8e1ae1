namespace ClassKit.Terms.Rules;

/// <summary>Which of several sittings counts.</summary>
public enum ResitChoice
{
    /// <summary>The last that was marked.</summary>
    Replaces,

    /// <summary>The one that earned the greatest share.</summary>
    Better,
}
