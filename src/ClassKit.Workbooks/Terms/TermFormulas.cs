using System.Globalization;
using ClassKit.Terms.Rules;
using ClassKit.Workbooks.Look;

namespace ClassKit.Workbooks.Terms;

/// <summary>The rule of a term as formulas of cells, without their <c>=</c>.</summary>
internal static class TermFormulas
{
    /// <summary>What a work comes to for the student of a row; an empty text where it does not count.</summary>
    public static string Work(TermGrid.WorkColumns work, int row, GradeRule rule)
    {
        var absent = $"IF({Last(work, row)}=\"{TermMarksSheet.Absent}\",{(rule.Absence == AbsenceRule.Zero ? "0" : "\"\"")},\"\")";
        if (work.Sittings is [var only])
            return $"IF(ISNUMBER({Mark(only, row)}),{Sitting(work, only, row)},{absent})";
        var (first, last) = (work.Sittings[0].Share, work.Sittings[^1].Share);
        var all = TermGrid.Along(first, last, row);
        return rule.Resit.Choice switch
        {
            ResitChoice.Better => $"IF(COUNT({all})>0,MAX({all}),{absent})",
            ResitChoice.Replaces => work.Sittings.Aggregate(absent, (otherwise, sat) =>
                $"IF(ISNUMBER({TermGrid.Cell(sat.Share, row)}),{TermGrid.Cell(sat.Share, row)},{otherwise})"
            ),
        };
    }

    /// <summary>What a marked sitting is worth.</summary>
    public static string Sitting(TermGrid.WorkColumns work, TermGrid.SittingColumns sat, int row)
    {
        var own = $"{TermGrid.MarksSheet}!{TermGrid.Cell(sat.Mark, TermGrid.WeightRow, isRowFixed: true)}";
        var outOf = sat.OutOf is { } other ? $"IF(N({OnMarks(other, row)})>0,{OnMarks(other, row)},{own})" : own;
        var share = $"{Mark(sat, row)}/{outOf}";
        if (sat.Late is { } late)
            share += $"*(1-IF({OnMarks(late, row)}=\"{TermMarksSheet.Late}\",{TermRuleSheet.Late},0))";
        if (sat.Sitting == 1)
            return share;
        var earlier = work
            .Sittings.TakeWhile(other => other != sat)
            .Select(other => $"ISNUMBER({Mark(other, row)}),{Mark(other, row)}=\"{TermMarksSheet.Absent}\"");
        return $"IF(OR({string.Join(',', earlier)}),MIN({TermRuleSheet.Cap},{share}),{share})";
    }

    /// <summary>A mark as it was typed.</summary>
    public static string Mark(TermGrid.SittingColumns sat, int row) => OnMarks(sat.Mark, row);

    /// <summary>The mean of a category's works without the lowest.</summary>
    public static string Category(TermGrid.CategoryBlock block, int row)
    {
        var works = TermGrid.Along(block.First, block.Last, row);
        var weights = TermGrid.Along(block.First, block.Last, TermGrid.WeightRow, isRowFixed: true);
        var mean = block.Category.Counting switch
        {
            CategoryCounting.ByPoints => $"SUMPRODUCT({works},{weights})/SUMIF({works},\">=0\",{weights})",
            CategoryCounting.Alike => Alike(works, block.Category.DropLowest),
        };
        return $"IF(COUNT({works})=0,\"\",{mean})";
    }

    /// <summary>The weighted mean of the categories, in percent.</summary>
    public static string Percent(int first, int last, int row)
    {
        var (categories, weights) = (TermGrid.Along(first, last, row), TermGrid.Along(first, last, TermGrid.WeightRow, isRowFixed: true));
        return $"IF(COUNT({categories})=0,\"\",{InPercent.Of($"SUMPRODUCT({categories},{weights})/SUMIF({categories},\">=0\",{weights})")})";
    }

    /// <summary>A percentage, rounded as the rule says.</summary>
    public static string Rounded(string percent, Rounding rounding)
    {
        if (rounding.Step is null)
            return $"IF({percent}=\"\",\"\",ROUND({percent},{Rounding.Digits}))";
        var steps = $"ROUND({percent}/{TermRuleSheet.Step},{Rounding.Digits})";
        var whole = rounding.Tie switch
        {
            TieRule.Up => $"INT({steps}+0.5)",
            TieRule.Down => $"-INT(0.5-{steps})",
            TieRule.Even => $"IF({steps}-INT({steps})=0.5,2*INT(({steps}+0.5)/2),INT({steps}+0.5))",
        };
        return $"IF({percent}=\"\",\"\",ROUND({whole}*{TermRuleSheet.Step},{Rounding.Digits}))";
    }

    private static string Alike(string works, int drop)
    {
        var dropped = string.Concat(
            Enumerable
                .Range(1, drop)
                .Select(place => string.Create(CultureInfo.InvariantCulture, $"-IF(COUNT({works})>{place},SMALL({works},{place}),0)"))
        );
        return string.Create(CultureInfo.InvariantCulture, $"(SUM({works}){dropped})/MAX(1,COUNT({works})-{drop})");
    }

    /// <summary>The last thing that was said of a work.</summary>
    private static string Last(TermGrid.WorkColumns work, int row) =>
        work
            .Sittings.Skip(1)
            .Aggregate(Mark(work.Sittings[0], row), (earlier, sat) => $"IF({Mark(sat, row)}<>\"\",{Mark(sat, row)},{earlier})");

    private static string OnMarks(int column, int row) => $"{TermGrid.MarksSheet}!{TermGrid.Cell(column, row)}";
}
