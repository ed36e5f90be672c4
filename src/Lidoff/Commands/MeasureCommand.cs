using System.CommandLine;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Carrying;
using Lidoff.Seeing.Measuring.Edges;
using Lidoff.Seeing.Measuring.Rulers;
using Lidoff.Seeing.Measuring.Targets;
using Lidoff.Seeing.Pictures;
using Lidoff.Talking;

namespace Lidoff.Commands;

/// <summary><c>lidoff measure JOB.json --json</c>: lengths from a picture.</summary>
public sealed class MeasureCommand : ILidoffCommand
{
    /// <inheritdoc/>
    public string Says => "Lengths, bodies and shapes from a picture: known lengths in it set the scale, each target comes with its doubt.";

    /// <inheritdoc/>
    public string Example => "measure job.json --json";

    /// <inheritdoc/>
    public void Build(Command command, Seat seat)
    {
        var job = new Argument<string>("JOB") { Description = "Job file as docs/contracts.md lays it down; - reads standard input." };
        var json = new Option<bool>("--json") { Description = "One JSON object on standard output." };
        command.Arguments.Add(job);
        command.Options.Add(json);
        command.SetAction(parsed => Run(parsed.GetValue(job)!, parsed.GetValue(json), seat));
    }

    private static int Run(string path, bool asJson, Seat seat)
    {
        var read = InputFiles.Lines(seat, path).Then(bytes => MeasureJobReader.Read(bytes));
        if (!read.Ok) return Refused(seat, read.Faults);
        var job = read.Value;
        foreach (var key in job.UnknownKeys) seat.Talk.Say(SeeingSentences.UnknownKey(key));
        var header = PictureFile.Read(ImagePath(job.Image, path, seat), job.Image);
        if (!header.Ok) return Refused(seat, header.Faults, job);
        foreach (var remark in header.Value.Remarks) seat.Talk.Say(remark);
        // A picture that breaks off still has its size and its clicked places: said, and measured by them alone.
        var look = PictureLook.At(ImagePath(job.Image, path, seat), job.Image, header.Value);
        if (!look.Ok) seat.Talk.SayFaults(look.Faults);
        var ruled = RulerReferences.Add(job, look.Ok ? look.Value : null, header.Value.Frame);
        var patterned = PatternReferences.Add(ruled.Ok ? ruled.Value.Job : job, ImagePath(job.Image, path, seat), header.Value);
        var calibrated = CalibrationReferences.Add(patterned.Ok ? patterned.Value.Job : job, job.Calibration is { } other ? ImagePath(other.Image, path, seat) : "", header.Value.Frame);
        // That the picture breaks off was said.
        if (!ruled.Ok || !patterned.Ok || !calibrated.Ok) return Refused(seat, [.. ruled.Faults, .. patterned.Faults.Except(look.Faults), .. calibrated.Faults], job);
        foreach (var says in ruled.Value.Says.Concat(patterned.Value.Says).Concat(calibrated.Value.Says)) seat.Talk.Say(says);
        var snapped = EdgeSnap.Run(calibrated.Value.Job, ImagePath(job.Image, path, seat), header.Value);
        // A picture that cannot be read to its end has no edges to move to; that it breaks off was said.
        if (!snapped.Ok && look.Ok) seat.Talk.SayFaults(snapped.Faults);
        var (asked, edges) = snapped.Ok ? snapped.Value : (calibrated.Value.Job, []);
        foreach (var (target, moved) in asked.Targets.Zip(edges)) foreach (var trouble in moved?.Troubles ?? []) seat.Talk.Say($"{target.Id}: {trouble}");
        var measured = Measurement.Run(asked, header.Value.Frame, look.Ok ? look.Value : null);
        if (!measured.Ok) return Refused(seat, measured.Faults, job);
        if (asJson) seat.Talk.Json(writer => MeasureWriter.Write(writer, measured.Value, edges));
        else foreach (var target in measured.Value) Show(target, seat);
        return measured.Value.All(target => target.Ok) ? ExitCodes.Done : ExitCodes.Look;
    }

    /// <summary>A relative name starts from the job file's folder, or, where nothing lies there, from the folder one works in.</summary>
    private static string ImagePath(string image, string jobPath, Seat seat)
    {
        var here = seat.PathOf(image);
        if (jobPath == "-") return here;
        var beside = Path.GetFullPath(image, Path.GetDirectoryName(seat.PathOf(jobPath))!);
        return File.Exists(beside) ? beside : here;
    }

    private static void Show(MeasuredTarget target, Seat seat)
    {
        if (target.Shape is { } shape)
        {
            seat.Talk.Line(SeeingSentences.Result(shape));
            foreach (var warning in shape.Warnings) seat.Talk.Line("  " + warning.Say);
            return;
        }

        if (target.Body is { } body)
        {
            seat.Talk.Line(SeeingSentences.Result(body));
            foreach (var warning in body.Warnings) seat.Talk.Line("  " + warning.Say);
            return;
        }

        if (!target.Length.TryValue(out var length))
        {
            foreach (var fault in target.Length.Faults) seat.Talk.Line($"{target.Id}: {fault.Say}");
            return;
        }

        seat.Talk.Line(SeeingSentences.Result(length));
        foreach (var warning in length.Warnings) seat.Talk.Line("  " + warning.Say);
    }

    private static int Refused(Seat seat, IReadOnlyList<Fault> faults, MeasureJob? job = null)
    {
        seat.Talk.SayFaults(faults);
        // What is wrong with targets is said in the same go; of a target that is another shape or a body the length is none by design.
        foreach (var target in job?.Targets ?? []) if (target is { Shape: null, Body: null }) foreach (var fault in target.Length.Faults) seat.Talk.Say($"{target.Id}: {fault.Say}");
        return ExitCodes.Refused;
    }
}
