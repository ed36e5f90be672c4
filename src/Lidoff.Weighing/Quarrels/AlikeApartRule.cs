using Lidoff.Evidence.Folding;
using Lidoff.Naming.Kinds;
using Lidoff.Numbers.Typed;
using Lidoff.Seeing.Kinds;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Weighing.Quarrels;

/// <summary>
/// Specimens that somebody said are alike at a spot, and whose marks there have no line in common: date and lot lines differ from one
/// unit to the next, a part's own line does not. Unread places and look-alikes fit each other.
/// </summary>
public sealed class AlikeApartRule : IQuarrelRule
{
    /// <inheritdoc/>
    public string Name => "alike apart";

    /// <inheritdoc/>
    public IEnumerable<Quarrel> Find(IDossierView view, DossierModel model)
    {
        foreach (var alike in view.Live<SpecimensAlike>().OrderBy(each => each.Id))
        {
            var marks = view.Live<MarkSighting>().Where(mark => mark.Value.Spot == alike.Value.Spot && alike.Value.Specimens.Contains(mark.Specimen))
                .GroupBy(mark => mark.Specimen, StringComparer.Ordinal).OrderBy(group => group.Key, StringComparer.Ordinal).Select(group => group.Last()).ToList();
            for (var i = 0; i < marks.Count; i++)
            {
                for (var j = i + 1; j < marks.Count; j++)
                {
                    var (a, b) = (marks[i], marks[j]);
                    if (a.Value.Lines.Any(line => b.Value.Lines.Any(other => Fit(line.Text, other.Text)))) continue;
                    yield return new(
                        Name,
                        [.. new[] { alike.Id, a.Id, b.Id }.Order()],
                        $"{a.Specimen} and {b.Specimen} cannot hold the same part at {alike.Value.Spot} and read {a.Value.Text} and {b.Value.Text}.",
                        $"read {alike.Value.Spot} of both specimens once more under the same light");
                }
            }
        }
    }

    // What could be the same print: as many places, each the same, alike or unread. A line with any number of places says too little.
    private static bool Fit(string one, string other)
    {
        if (one.Contains('*', StringComparison.Ordinal) || other.Contains('*', StringComparison.Ordinal)) return true;
        return one.Length == other.Length && one.Zip(other).All(pair => pair.First == '?' || pair.Second == '?' || LookAlikes.Alike(char.ToUpperInvariant(pair.First), char.ToUpperInvariant(pair.Second)));
    }
}
