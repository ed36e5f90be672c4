using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Pictures;

namespace Lidoff.Seeing.Measuring.Targets;

/// <summary>Turns the target of a job into known places.</summary>
public static class PatternReferences
{
    /// <summary>The job with its target among the references, and a sentence for what was found; or what is wrong with it.</summary>
    /// <param name="job">The job.</param>
    /// <param name="path">The picture's file.</param>
    /// <param name="header">Its header.</param>
    public static Outcome<(MeasureJob Job, IReadOnlyList<string> Says)> Add(MeasureJob job, string path, PictureHeader header)
    {
        Guard.NotNull(job);
        Guard.NotNull(header);
        return job.Pattern is null ? (job, []) : Take(job, TargetSearch.At(path, job.Image, header));
    }

    /// <summary>The same with what was found.</summary>
    internal static Outcome<(MeasureJob Job, IReadOnlyList<string> Says)> Take(MeasureJob job, Outcome<FoundTarget> looked)
    {
        var asked = job.Pattern!;
        if (!looked.TryValue(out var found)) return Outcome<(MeasureJob, IReadOnlyList<string>)>.Failed([.. looked.Faults.Select(Placed)]);
        if (asked.PitchMm is not { } pitch) return new Fault("pattern.pitch_mm", "the distance from one corner or dot to the next", SeeingSentences.Placed("pattern.pitch_mm", TargetSentences.PitchOpen(found)));
        var target = KnownTarget.Of(found, pitch, asked.UMm ?? (KnownTarget.PrintedU * pitch));
        return (job with { References = [.. job.References, target.Longest(asked.HeightMm)], Pattern = null }, TargetSentences.Found(found, pitch));
    }

    // What is wrong with the picture itself is not the pattern's.
    private static Fault Placed(Fault fault) => fault.Where == TargetSentences.None.Where ? fault with { Where = "pattern", Say = SeeingSentences.Placed("pattern", fault.Say) } : fault;
}
