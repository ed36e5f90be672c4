using System.Globalization;
using Lidoff.Naming.Ranking;

namespace Lidoff.Commands;

/// <summary>Every sentence of <c>name</c> and <c>date</c> that a person may see.</summary>
public static class NameCommandSentences
{
    /// <summary>--top below one.</summary>
    public const string Top = "--top is a whole number of one or more.";

    /// <summary>One line of a ranking for people.</summary>
    public static string Line(string id, LocalBelief belief)
    {
        var head = belief.Level switch
        {
            NameLevel.Part => $"{belief.Candidates[0].Part.Name} ({Percent(belief.Candidates[0].P)})",
            NameLevel.Family => $"family {belief.Family!.Name} ({Percent(belief.Family.P)})",
            _ => "not named",
        };
        var rest = string.Join(", ", belief.Candidates.Take(3).Select(c => $"{c.Part.Name} {Percent(c.P)}"));
        return $"{id}: {head}; {rest}; none of these {Percent(belief.NoneP)}";
    }

    private static string Percent(double p) => string.Create(CultureInfo.InvariantCulture, $"{100 * p:0.#} %");
}
