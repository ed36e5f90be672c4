using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Targets;
using Lidoff.Seeing.Pictures;

namespace Lidoff.Seeing.Measuring.Carrying;

/// <summary>Looks at the calibration picture of a job.</summary>
public static class CalibrationReferences
{
    private const string Image = "calibration.image";

    /// <summary>
    /// The job with what its calibration picture tells of the camera, and sentences for what was found there; or what is wrong with it. Where the job has nothing of known size in its own picture,
    /// the carried scale is its known length.
    /// </summary>
    /// <param name="job">The job, its own rulers and target already found.</param>
    /// <param name="path">The calibration picture's file; not read where the job names none.</param>
    /// <param name="frame">The picture to measure in.</param>
    public static Outcome<(MeasureJob Job, IReadOnlyList<string> Says)> Add(MeasureJob job, string path, PictureFrame frame)
    {
        Guard.NotNull(job);
        Guard.NotNull(frame);
        if (job.Calibration is not { } asked) return (job, []);
        var read = PictureFile.Read(path, asked.Image);
        if (!read.TryValue(out var header)) return Outcome<(MeasureJob, IReadOnlyList<string>)>.Failed([.. read.Faults.Select(fault => Placed(fault, Image))]);
        if (!CameraCalibration.Fits(header.Width, header.Height, frame))
        {
            return new Fault(Image, $"a picture of {frame.Width} × {frame.Height} pixels", SeeingSentences.Placed(Image, SeeingSentences.CalibrationSize(asked.Image, header.Width, header.Height, frame.Width, frame.Height)));
        }

        var looked = TargetSearch.At(path, asked.Image, header);
        if (!looked.TryValue(out var found)) return Outcome<(MeasureJob, IReadOnlyList<string>)>.Failed([.. looked.Faults.Select(fault => Placed(fault, fault.Where == TargetSentences.None.Where ? "calibration" : Image))]);
        if (asked.Pattern.PitchMm is not { } pitch) return new Fault("calibration.pitch_mm", "the distance from one corner or dot to the next", SeeingSentences.Placed("calibration.pitch_mm", TargetSentences.PitchOpen(found)));
        var target = KnownTarget.Of(found, pitch, asked.Pattern.UMm ?? (KnownTarget.PrintedU * pitch));
        // Its camera stood where the other one does, so that its distance is the same as far as anybody measured it.
        var scaled = ScaledPicture.Of(new() { Image = asked.Image, References = [target.Longest(asked.Pattern.HeightMm)], Targets = [], CameraDistanceMm = job.CameraDistanceMm }, header.Frame);
        if (!scaled.TryValue(out var picture)) return Outcome<(MeasureJob, IReadOnlyList<string>)>.Failed([.. scaled.Faults.Select(fault => Placed(fault, "calibration"))]);
        var known = CameraCalibration.Of(picture);
        var own = job.References.Count > 0 || job.KnownPoints.Count > 0;
        return (
            job with { Calibration = null, Camera = new(asked.Image, known), References = own ? job.References : [known.Across(frame)] },
            [TargetSentences.Seen(found), SeeingSentences.CarriedCamera(asked.Image, Math.Max(frame.Width, frame.Height) / 2.0 / known.MmPerHalf, known.CarriedU, known.Bend, known.Lens!.U)]);
    }

    private static Fault Placed(Fault fault, string where) => fault with { Where = where, Say = SeeingSentences.Placed(where, fault.Say) };
}
