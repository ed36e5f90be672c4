using System.Text.RegularExpressions;
using Lidoff.Numbers.Failing;
using Lidoff.Opening.Cautioning;
using Lidoff.Opening.Kinds;

namespace Lidoff.Opening.Resuming;

/// <summary>Which steps leave open how the cell stands: whoever does one has to say it, nothing is taken from its words.</summary>
public static partial class CellSteps
{
    /// <summary>True for an act on the cell, and for words that name a cell and say that something was put in, taken out or (un)plugged.</summary>
    public static bool Touches(StepSighting step) =>
        Guard.NotNull(step).Act == StepAct.Cell || (Cell().IsMatch(step.Does) && Moved().IsMatch(step.Does));

    [GeneratedRegex(@"\b(cells?|batter(y|ies)|lipo|li-?ion|pouch|accu)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Cell();

    [GeneratedRegex(@"\b(out|off|away|back|in)\b|\b(un|re)?plug|\b(dis|re)?connect(s|ed|ing)?\b|\b(un|de|re)?solder(s|ed|ing)?\b|\b(take|took|taken|remov|lift|pull|pry|pried|cut|swap|replac|insert|free)", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Moved();
}
