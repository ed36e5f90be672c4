using Lidoff.Numbers.Calculating;
using Lidoff.Reckoning;

namespace Lidoff.Bench.Rooms.Reckon.Binding;

/// <summary>Finds a calculation by what somebody calls it: the words of a question do as well as its name.</summary>
public static class CalculationSearch
{
    // A whole word of a name counts most, then a part of one, then one of the sentence, then one of an input.
    private const int NameWord = 6, InName = 4, InSentence = 2, InInput = 1;

    // Words of questions that say nothing of what is asked.
    private static readonly HashSet<string> Filling = new(StringComparer.OrdinalIgnoreCase) { "how", "what", "which", "is", "are", "does", "do", "it", "its", "the", "a", "an", "of", "for", "to", "in", "on", "at", "my", "much", "many", "will", "can" };

    // What makers say, and what the formulas are called. Common practice, no source.
    private static readonly Dictionary<string, string[]> AlsoCalled = new(StringComparer.OrdinalIgnoreCase)
    {
        ["battery"] = ["cell"], ["life"] = ["runtime", "lasts"], ["lifetime"] = ["runtime", "lasts"], ["last"] = ["lasts", "runtime"], ["long"] = ["runtime", "time"],
        ["charging"] = ["charge"], ["mah"] = ["charge", "capacity"], ["wh"] = ["energy"], ["ldo"] = ["linear"], ["dcdc"] = ["converter"], ["antenna"] = ["wavelength", "antennas"], ["range"] = ["path_loss"],
        ["bending"] = ["bend"], ["flex"] = ["flexible", "bend"], ["strength"] = ["strain"], ["baud"] = ["uart"], ["pull-up"] = ["pullup"], ["pullups"] = ["pullup"], ["width"] = ["width"], ["hic"] = ["hic"],
        ["focus"] = ["sharp"], ["cost"] = ["price"], ["age"] = ["ageing"], ["heat"] = ["loss", "thermal"], ["ntc"] = ["thermistor"], ["soc"] = ["state_of_charge"], ["percent"] = ["state_of_charge"],
    };

    /// <summary>
    /// Calculations that hold any of the words, those that hold most first; every one, in order of name, where nothing was typed.
    /// The flag is false where none holds them all.
    /// </summary>
    public static (IReadOnlyList<CalculationInfo> Found, bool All) Of(string? typed)
    {
        var every = Calculations.All.Select(calculation => calculation.Info).OrderBy(info => info.Name, StringComparer.Ordinal).ToList();
        var words = (typed ?? "").Split([' ', '_', '?', ',', '.'], StringSplitOptions.RemoveEmptyEntries).Where(word => !Filling.Contains(word)).ToList();
        if (words.Count == 0) return (every, true);
        var scored = every.Select(info => (Info: info, Scores: words.Select(word => Score(info, word)).ToList())).Where(each => each.Scores.Any(score => score > 0)).ToList();
        return (
            [.. scored.OrderByDescending(each => each.Scores.Count(score => score > 0)).ThenByDescending(each => each.Scores.Sum()).ThenBy(each => each.Info.Name, StringComparer.Ordinal).Select(each => each.Info)],
            scored.Any(each => each.Scores.All(score => score > 0)));
    }

    private static int Score(CalculationInfo info, string word) =>
        (AlsoCalled.TryGetValue(word, out var called) ? called.Prepend(word) : [word]).Max(each => Held(info, each));

    private static int Held(CalculationInfo info, string word) =>
        info.Name.Split('_').Contains(word, StringComparer.OrdinalIgnoreCase) ? NameWord
        : info.Name.Contains(word, StringComparison.OrdinalIgnoreCase) ? InName
        : info.Says.Contains(word, StringComparison.OrdinalIgnoreCase) ? InSentence
        : info.Inputs.Any(input => input.Key.Contains(word, StringComparison.OrdinalIgnoreCase)) ? InInput : 0;
}
