using Lidoff.Evidence.Folding;
using Lidoff.Opening.Kinds;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Weighing.Quarrels;

/// <summary>Two currents noted for one state of one specimen that one state cannot draw.</summary>
public sealed class StatesApartRule : IQuarrelRule
{
    // A current that was noted without a doubt: hand meters on their small ranges, with the device's own wandering. Common practice, no source.
    private const double Untold = 0.05;

    /// <inheritdoc/>
    public string Name => "currents apart";

    /// <inheritdoc/>
    public IEnumerable<Quarrel> Find(IDossierView view, DossierModel model)
    {
        var sitting = new Lazy<OneSitting>(() => new(view));
        foreach (var state in view.Live<StateSighting>().Where(each => each.Value.CurrentUa is not null).GroupBy(each => each.Value.Name, StringComparer.Ordinal).OrderBy(group => group.Key, StringComparer.Ordinal))
        {
            foreach (var (a, b) in Apart.Pairs([.. state]).Where(pair => Apart.Of(pair.First.Value.CurrentUa!.Value, Doubt(pair.First.Value), pair.Second.Value.CurrentUa!.Value, Doubt(pair.Second.Value)) && sitting.Value.Holds(pair.First, pair.Second)))
            {
                yield return new(
                    Name,
                    [.. new[] { a.Id, b.Id }.Order()],
                    $"state {state.Key} cannot draw {a.Value.Current} and {b.Value.Current}, unless it is two states; the later one counts until it is settled.",
                    $"measure the current in state {state.Key} once more; where it is two states, name them apart, else take back the reading that is wrong",
                    5);
            }
        }
    }

    private static double Doubt(StateSighting state) => state.UUa is > 0 and var u ? u : Untold * Math.Abs(state.CurrentUa!.Value);
}
