using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Measuring;

/// <summary>What geometry demands of a job once the picture's size is known.</summary>
internal static class JobChecks
{
    /// <summary>Every fault of the references, in order.</summary>
    public static List<Fault> References(MeasureJob job, PictureFrame frame)
    {
        var faults = new List<Fault>();
        for (var i = 0; i < job.References.Count; i++)
        {
            var reference = job.References[i];
            Chord(faults, $"reference[{i}].", reference.From, reference.To, reference.HeightMm, job, frame);
        }

        return faults;
    }

    /// <summary>The target, or every fault of it.</summary>
    public static Outcome<TargetLength> Target(TargetLength target, MeasureJob job, PictureFrame frame)
    {
        var faults = new List<Fault>();
        Chord(faults, "", target.From, target.To, target.HeightMm, job, frame);
        return faults.Count == 0 ? target : Outcome<TargetLength>.Failed(faults);
    }

    private static void Chord(List<Fault> faults, string where, PicturePoint from, PicturePoint to, double heightMm, MeasureJob job, PictureFrame frame)
    {
        foreach (var (name, point) in new[] { ("from", from), ("to", to) })
        {
            if (frame.Holds(point)) continue;
            faults.Add(new(
                where + name,
                $"a place within {frame.Width} × {frame.Height} pixels",
                SeeingSentences.OutsideFrame(where + name, point.X, point.Y, frame.Width, frame.Height)));
        }

        if (from == to) faults.Add(new(where + "to", "another place than from", SeeingSentences.ZeroLength(where + "from")));
        if (job.CameraDistanceMm is { } camera && heightMm >= camera)
        {
            faults.Add(new(where + "height_mm", "a height below the camera", SeeingSentences.AboveCamera(where + "height_mm", heightMm, camera)));
        }
    }
}
