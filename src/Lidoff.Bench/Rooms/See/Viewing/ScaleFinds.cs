using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Rulers;
using Lidoff.Seeing.Measuring.Targets;

namespace Lidoff.Bench.Rooms.See.Viewing;

/// <summary>What was found in a picture that can give its scale, as it is shown: nothing of it is stored yet.</summary>
/// <param name="Sha256">The picture.</param>
/// <param name="Target">A checkerboard or dot grid that waits for its pitch; null where none can serve.</param>
/// <param name="Rulers">Rulers that wait to be taken.</param>
/// <param name="Says">What is said of it.</param>
/// <param name="Marks">Small crosses over the picture.</param>
/// <param name="Lines">Rulers over the picture.</param>
public sealed record ScaleFinds(string Sha256, FoundTarget? Target, ValueList<RulerProposal> Rulers, ValueList<string> Says, ValueList<StageMark> Marks, ValueList<StageLine> Lines)
{
    private const int MostRulers = 3;

    /// <summary>From what was found in it, or from why it could not be read.</summary>
    public static ScaleFinds Of(string sha256, Outcome<FoundScales> looked)
    {
        if (!looked.TryValue(out var found)) return new(sha256, null, [], [.. looked.Faults.Select(fault => fault.Say)], [], []);
        var target = found.Target.Ok ? found.Target.Value : null;
        ValueList<RulerProposal> rulers = [.. found.Rulers.Take(MostRulers)];
        List<string> says = target is not null ? [TargetSentences.Seen(target), TargetSentences.Lens(target)] : [];
        // A target that was found and cannot serve is worth its sentence; that there is none only where there is no ruler either.
        if (target is null && (rulers.Count == 0 || found.Target.Faults[0].Say != TargetSentences.None.Say)) says.Add(found.Target.Faults[0].Say);
        if (rulers.Count == 0 && target is null) says.Add(SeeSentences.NoRulerEither);
        return new(
            sha256, target, rulers, [.. says], target is null ? [] : FoundOver.Of(target),
            [.. rulers.Select((ruler, i) => new StageLine($"found:{i}", ruler.First.X, ruler.First.Y, ruler.Last.X, ruler.Last.Y, "scale", SeeSentences.RulerSays(ruler), false))]);
    }
}
