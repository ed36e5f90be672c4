using System.Globalization;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Bodies;
using Lidoff.Seeing.Measuring.Shapes;
using Lidoff.Seeing.Standards;

namespace Lidoff.Seeing;

/// <summary>Every sentence of the room See that a person reads.</summary>
public static class SeeingSentences
{
    /// <summary>Doubts of one end alone.</summary>
    public const string BothEnds = "two numbers, one for each end";

    /// <summary>Where moved ends come from must be told together with what moved them.</summary>
    public const string ClickedWithEndsBy = "given together with ends_by: where a person clicked, and what moved the ends from there";

    /// <summary>Target and references at different heights, the camera's distance unknown.</summary>
    public static string OtherPlane(double stepMm, double shiftMm) =>
        $"This length stands {Mm(Math.Abs(stepMm))} {(stepMm > 0 ? "above" : "below")} what set the scale. How far away the camera was is not known, so a typical distance "
        + $"was used: it moved the length by {Mm(shiftMm)}, and the interval is wider for it. Give camera_distance_mm, or a reference at the same height.";

    /// <summary>Target and references at different heights, corrected by a typed distance, and the correction still counts.</summary>
    public static string OtherPlaneCorrected(double stepMm, double shiftMm) =>
        $"This length stands {Mm(Math.Abs(stepMm))} {(stepMm > 0 ? "above" : "below")} what set the scale. The camera's distance corrected it by {Mm(shiftMm)}; "
        + "a wrong distance or height shows in full in that part.";

    /// <summary>Scale differs with direction.</summary>
    /// <param name="percent">By how much.</param>
    /// <param name="slant">The slant that explains it, if one does.</param>
    public static string UnequalAxes(double percent, string slant = "") =>
        $"The scale differs by {Number(percent, 1)} % between directions, more than the errors of what set it: a slanted camera or unequal pixels. {slant}"
        + "It was allowed for as far as that tells; give a known length in each direction.";

    /// <summary>How well a slant explains that known lengths disagree.</summary>
    /// <param name="ratio">How many times likelier they are.</param>
    /// <param name="degrees">The slant.</param>
    /// <param name="low">With 95 % it is more.</param>
    /// <param name="high">With 95 % it is less.</param>
    public static string SlantExplains(double ratio, double degrees, double low, double high) =>
        $"The known lengths are {(ratio >= 1000 ? "over 1000" : Number(ratio, 0))} times likelier by a camera at a slant, of about {Slant(degrees, low, high)}, than square to the board. ";

    private static string Slant(double degrees, double low, double high) => $"{Number(degrees, 0)}° (90 % between {Number(low, 0)} and {Number(high, 0)}°)";

    /// <summary>The orientation tag mirrors the picture.</summary>
    public static string Mirrored() =>
        "The picture's orientation tag mirrors it: lengths hold, left and right do not. Check which side of the board it shows.";

    /// <summary>The words in the picture read mirrored.</summary>
    public static string WordsMirrored() =>
        "The words in the picture read mirrored: lengths hold, left and right do not. It was flipped before it came here, or it shows the board through itself.";

    /// <summary>The target is much longer than the longest reference.</summary>
    public static string ShortReference(double times) =>
        $"This length is {Number(times, 1)} times as long as the longest reference, whose click error grows with it. Take the longest known length in the picture.";

    /// <summary>Scale changes with the radius.</summary>
    public static string Lens(double percent) =>
        $"The lens bends straight lines: it moves the end of the long side by {Number(percent, 1)} % of its distance from the middle. It was allowed for; measure near the middle.";

    /// <summary>Scale changes across the picture.</summary>
    /// <param name="degrees">The slant.</param>
    /// <param name="range">Between what it lies.</param>
    /// <param name="percent">By how much the scale changes.</param>
    /// <param name="explains">What it explains, if known lengths disagree.</param>
    public static string Tilt(double degrees, (double Low, double High) range, double percent, string explains = "") =>
        $"The camera looked at a slant of about {Slant(degrees, range.Low, range.High)}: the scale changes by {Number(percent, 1)} % across the picture. {explains}"
        + "It was allowed for as far as the picture and the known lengths tell; "
        + "take the picture square to the board, or mark known lengths on every side of what is measured.";

    /// <summary>References contradict one another.</summary>
    /// <param name="percent">By how much.</param>
    /// <param name="slant">The slant that explains it as well, if one does.</param>
    public static string ReferenceDisagrees(double percent, string slant = "") =>
        $"The references disagree by {Number(percent, 1)} %, more than their errors allow. One of them may be mistyped, clicked wrongly or lie at another height; the interval is wider for it.{(slant.Length == 0 ? "" : " " + slant.TrimEnd())}";

    /// <summary>A picture's own scale that another one of the same camera and zoom contradicts.</summary>
    /// <param name="from">The other picture.</param>
    /// <param name="percent">How much more mm the picture shows by its own known lengths; below zero: less.</param>
    public static string CarriedDisagrees(string from, double percent) =>
        $"By its own known lengths the picture shows {Number(Math.Abs(percent), 1)} % {(percent > 0 ? "more" : "less")} of the board than {Quoted(from)} does, of the same camera and zoom. "
        + "The zoom or the distance was changed in between, or a known length is mistyped or clicked wrongly; its own scale was used. If the change was meant, give it a zoom tag of its own.";

    /// <summary>A picture for calibration that is not as large.</summary>
    public static string CalibrationSize(string from, int width, int height, int ownWidth, int ownHeight) =>
        $"{Quoted(from)} is {width} × {height} pixels and the picture to measure {ownWidth} × {ownHeight}: another size is another scale and another part of the lens. Take both alike.";

    /// <summary>What another picture tells of the camera.</summary>
    public static string CarriedCamera(string from, double pxPerMm, double relativeU, double bend, double bendU) =>
        $"By {Quoted(from)} the camera shows {Number(pxPerMm, 2)} px/mm ± {Number(100 * relativeU, 1)} % about its middle, and its lens moves the end of the long side by {Number(100 * bend, 2)} ± {Number(100 * bendU, 2)} %, zooming and focusing again allowed for.";

    /// <summary>A known length that the registered board contradicts.</summary>
    public static string BoardDisagrees(string picture, double notedMm, double notedU, double boardMm, double boardU) =>
        $"The known length of {Number(notedMm, 3)} ± {Number(notedU, 3)} mm in {Quoted(picture)} comes to {Number(boardMm, 3)} ± {Number(boardU, 3)} mm by the board, which the other pictures lie on. "
        + "The zoom may have moved, or one of the known lengths is mistyped or clicked wrongly; the board's scale was used.";

    /// <summary>A picture whose landmarks cannot be those of the board.</summary>
    public static string NotThisBoard(string picture, int landmarks) =>
        $"{Quoted(picture)} was left out: its {landmarks} landmarks do not fit this board, and no single one of them is to blame. It may show another board, or several names are wrong.";

    /// <summary>Too little in common.</summary>
    public static string TooFewLandmarks(string picture, int shared, IReadOnlyList<string> wanted) =>
        $"{Quoted(picture)} was left out: it shares {(shared == 0 ? "no landmark" : "one landmark")} with the board, and two are needed, better four far apart."
        + (wanted.Count == 0 ? "" : $" Point at {string.Join(", ", wanted.Select(Quoted))} in it, whichever it shows.");

    /// <summary>A picture that lies either way round.</summary>
    public static string SideOpen(string picture, int shared) =>
        $"{Quoted(picture)} was left out: its {shared} landmarks lie on one line or close to it, so that either side fits. Say which side it shows, or point at one more landmark away from that line.";

    /// <summary>A picture that mirrors where it should not. <paramref name="or"/> is the picture it contradicts where both may be the wrong one.</summary>
    public static string OtherSide(string picture, string? or) =>
        (or is null ? $"{Quoted(picture)} lies mirrored" : $"{Quoted(picture)} and {Quoted(or)} lie mirrored to one another")
        + " against the side that was noted: it shows the other side, or the picture was mirrored before it came here.";

    /// <summary>A landmark that does not fit.</summary>
    public static string WrongLandmark(string landmark, string picture, double? um, double px, IReadOnlyList<string> or) =>
        $"{Quoted(landmark)} in {Quoted(picture)} lies {(um is { } known ? $"{Number(known, 0)} µm" : $"{Number(px, 0)} px")} from where the others put it and was left out: its name or its place is wrong"
        + (or.Count == 0 ? "." : $", there or in {string.Join(", ", or.Select(Quoted))}.");

    /// <summary>Something of a shot that no bench has.</summary>
    public static Fault ShotOutOfRange(string what, double value, double least, double most, string unit) => new(
        what,
        string.Create(CultureInfo.InvariantCulture, $"{least:0.##} to {most:0.##} {unit}"),
        string.Create(CultureInfo.InvariantCulture, $"“{what}” is {value:0.###} {unit}; it should be {least:0.##} to {most:0.##} {unit}."));

    /// <summary>The lens would stand among the parts.</summary>
    public static Fault LensInTheParts(double reliefMm, double distanceMm) => new(
        "relief",
        "less than the distance",
        string.Create(CultureInfo.InvariantCulture, $"The tallest part is {reliefMm:0.##} mm high and the lens {distanceMm:0.##} mm above the board: they would touch."));

    /// <summary>Few landmarks.</summary>
    public static string SlantUnknown(string picture, int landmarks) =>
        $"{Quoted(picture)} hangs on {landmarks} landmark{(landmarks == 1 ? "" : "s")}: how it leans is taken from what is usual on a bench, and doubts are wider for it. Four far apart would show it.";

    /// <summary>Both ends at one place.</summary>
    public static string ZeroLength(string where) => $"“{where}” and its “to” are the same place, so there is no length between them.";

    /// <summary>Ends that their clicks cannot tell apart.</summary>
    public static string WithinItsClicks(string where, double px, double clickPx) =>
        $"“{where}” is {Number(px, 4)} px long and each of its ends is clicked to {Number(clickPx, 2)} px: no scale comes of that. Take the longest known length in the picture.";

    /// <summary>A number that no bench has.</summary>
    public static Fault BeyondTheBench(string where, double value, double least, double most, string unit) => new(
        where,
        string.Create(CultureInfo.InvariantCulture, $"{least:0.#####} to {most:0.#####} {unit}"),
        string.Create(CultureInfo.InvariantCulture, $"“{where}” is {value:0.#####e0} {unit}; it should be {least:0.#####} to {most:0.#####} {unit}."));

    /// <summary>Known lengths that no camera can show.</summary>
    public static string NoCamera(double? cameraMm) =>
        "No camera can show the known lengths as they lie in the picture"
        + (cameraMm is { } mm ? $" from {Mm(mm)} away: no lens is as wide as that. Check camera_distance_mm, the lengths and their heights." : ". Check the lengths and their heights.");

    /// <summary>Something higher up than the camera is likely to have been.</summary>
    public static string AboveLikelyCamera(double heightMm, double cameraMm) =>
        $"Something {Mm(heightMm)} above the board would stand beyond the camera, which was about {Mm(cameraMm)} away by what the picture shows. Check height_mm, or give camera_distance_mm.";

    /// <summary>Too few known places.</summary>
    public static string FewKnownPoints(int count) =>
        $"{count} known place{(count == 1 ? "" : "s")} cannot tell a slant from a stretch: four are needed, no three of them on one line. For fewer, give the lengths between them as references.";

    /// <summary>Known places on a line.</summary>
    public static string KnownPointsOnALine() => "The known places lie on one line, or three of every four do: how the board leans across it stays open. Add one well away from it.";

    /// <summary>One place known twice.</summary>
    public static string KnownPointTwice(double x, double y) => $"The known place at ({Number(x, 1)}, {Number(y, 1)}) is given twice, in the picture or on the board.";

    /// <summary>The same place twice running.</summary>
    public static string SamePlaceTwice(string where) => $"“{where}” is the same place as the one before it.";

    /// <summary>A ruler was read.</summary>
    public static string RulerFound(int gaps, double tickMm, double pxPerMm) =>
        $"The ruler shows {gaps} gaps of {Number(tickMm, 4)} mm between its lines: {Number(pxPerMm, 2)} px/mm.";

    /// <summary>No ruler where one was pointed out.</summary>
    public static string NoRuler() => "No evenly spaced lines were found there. Point along a row of at least eight of them, across their middles, and have the picture at hand.";

    /// <summary>A sentence about one part of a job, with its place there.</summary>
    public static string Placed(string where, string say) => $"“{where}”: {say}";

    /// <summary>How a ruler that was found is pointed at in a job, its unit to be filled in.</summary>
    public static string RulerPointed(double x1, double y1, double x2, double y2) => string.Create(
        CultureInfo.InvariantCulture, $"Point along it, with tick_mm: \"ruler\":[{{\"from\":[{x1:0},{y1:0}],\"to\":[{x2:0},{y2:0}],\"tick_mm\":…}}].");

    /// <summary>A ruler was looked for in the whole picture.</summary>
    public static string NoRulerFound() => "No ruler was found in the picture: 23 lines or more must show, of which every fifth or tenth, or every eighth and so on, is longer. Point along its lines instead: “ruler”: [{from, to}].";

    /// <summary>Where a ruler that was found lies.</summary>
    public static string RulerAt(double x1, double y1, double x2, double y2) => string.Create(CultureInfo.InvariantCulture, $"A ruler lies from ({x1:0}, {y1:0}) to ({x2:0}, {y2:0}).");

    /// <summary>A ruler whose unit its lines do not tell.</summary>
    public static string RulerUnitOpen(int gaps, double periodPx) =>
        $"The ruler's {gaps + 1} lines lie {Number(periodPx, 2)} px apart, but the longer ones among them do not tell whether that is 1 mm, 0.5 mm or 1/16, 1/32 or 1/64 in. Give tick_mm: 1, 0.5, 1.5875, 0.79375 or 0.396875.";

    /// <summary>Places that make no such shape.</summary>
    public static string NoShape(ShapeKind kind) => kind switch
    {
        ShapeKind.Circle => "The places lie on one line: no circle goes through them.",
        ShapeKind.Pitch => "The places do not make a row: two of them are the same along it.",
        _ => "The places make no such shape.",
    };

    /// <summary>An outline that crosses itself; its sides are counted from 1, by the corner they begin at.</summary>
    public static string OutlineCrosses(int one, int other) =>
        $"The outline crosses or touches itself: its sides {one} and {other} meet. Give the corners in the order in which one walks round it; of two areas give each by itself.";

    /// <summary>The first corner stands at the end again.</summary>
    public static string OutlineClosedTwice() => "The last corner is the first one again. An outline closes by itself: leave the last one out.";

    /// <summary>A job without anything of known size.</summary>
    public static Fault NoKnownLength() => new(
        "reference",
        "a known length, four known places, a ruler, a target or a calibration",
        "The job says nothing of known size. Give “reference” (a length that is known: from, to, length_mm), “points” (four places or more that are known on the board: at, mm), "
        + "“ruler” (a row of its lines: from, to), “pattern” (a checkerboard or dot grid in the picture: pitch_mm) or “calibration” (another picture of one, by the same camera and zoom: image, pitch_mm).");

    /// <summary>A length was looked for where another shape was asked for.</summary>
    public static string NotALength(ShapeKind kind) => $"This target is {(kind is ShapeKind.Angle or ShapeKind.Area ? "an" : "a")} {kind.ToString().ToLowerInvariant()}, not a length.";

    /// <summary>A length was looked for where a body was asked for.</summary>
    public static string BodyNotALength() => "This target is a body, not a length.";

    /// <summary>Corners that are not those of a rectangle.</summary>
    public static string NoBody() => "The places are not the corners of a rectangle: give three or four of them, one after the other around it, or a box: left, top, width, height.";

    /// <summary>A measured body in words.</summary>
    public static string Result(MeasuredBody body) =>
        $"{body.Id}: {Number(body.Length.ValueMm, 4)} × {Number(body.Width.ValueMm, 4)} mm, 90 % between {Number(body.Length.LowMm, 4)} and {Number(body.Length.HighMm, 4)} mm, {Number(body.Width.LowMm, 4)} and {Number(body.Width.HighMm, 4)} mm";

    /// <summary>A measured shape in words.</summary>
    public static string Result(MeasuredShape shape)
    {
        var unit = shape.Kind switch { ShapeKind.Angle => "°", ShapeKind.Area => " mm²", _ => " mm" };
        return $"{shape.Id}: {Number(shape.Value, 4)}{unit}, 90 % between {Number(shape.Low, 4)} and {Number(shape.High, 4)}{unit}"
            + (shape.Kind == ShapeKind.Pitch ? $", over {shape.Gaps} gaps" : "")
            + (shape.Snap is { } snap ? $"; a standard pitch of {Number(snap.Mm, 3)} mm ({Number(snap.LikelihoodRatio, 1)} to 1)" : "");
    }

    /// <summary>A point beyond the picture.</summary>
    public static string OutsideFrame(string where, double x, double y, int width, int height) =>
        $"“{where}” lies at ({Number(x, 1)}, {Number(y, 1)}), outside the picture of {width} × {height} pixels.";

    /// <summary>Something as tall as the camera is far.</summary>
    public static string AboveCamera(string where, double heightMm, double cameraMm) =>
        $"“{where}” is {Mm(heightMm)}, but the camera was only {Mm(cameraMm)} from the board.";

    /// <summary>No file where the job says one is.</summary>
    public static string UnknownImage(string name) => $"There is no picture at {Quoted(name)}.";

    /// <summary>OpenCV, or what it wants of the system, is missing.</summary>
    public static string NoVision(string why) =>
        "Focus stacks, stitching, light sets and averages are off on this machine; everything else of the room works. "
        + (why.Contains("libgtk", StringComparison.Ordinal)
            ? "OpenCV wants the system library GTK 3: install it (Debian: apt-get install libgtk-3-0) and start Lidoff again."
            : $"OpenCV's library could not be loaded from beside the program; build it again (./lidoff). The system says: {Quoted(why)}");

    /// <summary>Progress of a pyramid.</summary>
    public static string MakingTiles(string name) => $"Making tiles of {Quoted(name)}";

    /// <summary>Edges of a look of another shape.</summary>
    public static string LookEdges(int count) => $"{count} numbers (direction, convergence along x and y, excess over a right angle, bend), or none";

    /// <summary>A covariance that does not belong to the edges.</summary>
    public static string LookCovariance(int count) => $"{count} numbers, the lower triangle of the edges' covariance row by row, where there are edges, and none without them";

    /// <summary>Numbers that are no covariance.</summary>
    public static string LookNoCovariance => "a covariance: a symmetric, positive definite matrix";

    /// <summary>A key of a job that means nothing here.</summary>
    public static string UnknownKey(string key) => $"The job's key {Quoted(key)} is not known and was left out.";

    /// <summary>One measured length in words.</summary>
    public static string Result(MeasuredLength length) =>
        $"{length.Id}: {Number(length.ValueMm, 4)} mm, 90 % between {Number(length.LowMm, 4)} and {Number(length.HighMm, 4)} mm"
        + (length.Snap is { } snap ? $"; a standard {snap.Kind} of {Number(snap.Mm, 3)} mm ({Number(snap.LikelihoodRatio, 1)} to 1)" : "");

    /// <summary>The pitch is settled.</summary>
    public static string PitchDecided(SpanCandidate best, int count, SpanKind kind) =>
        $"The pitch is {Number(best.PitchMm, 3)} mm: {(kind == SpanKind.CableWidth ? "a cable of" : "a row of")} {count} with {best.Gaps} gaps makes {Number(best.SpanMm, 2)} mm."
        + (best.Gaps == (kind == SpanKind.CableWidth ? count + 1 : count - 1) ? "" : " That is not the usual number of gaps: count again, and check what was measured.");

    /// <summary>A better reading of the same span would decide.</summary>
    public static string MeasureSpanBetter(SpanCandidate best, SpanCandidate rival, int count, double neededMm) =>
        $"The pitch may be {Number(best.PitchMm, 3)} or {Number(rival.PitchMm, 3)} mm. Measuring over all {count} again to ±{Number(neededMm, 3)} mm (standard uncertainty) would decide: "
        + $"{Number(best.SpanMm, 2)} against {Number(rival.SpanMm, 2)} mm.";

    /// <summary>Counting would decide.</summary>
    public static string CountAgain(SpanCandidate best, SpanCandidate rival) =>
        $"The pitch may be {Number(best.PitchMm, 3)} mm over {best.Gaps} gaps or {Number(rival.PitchMm, 3)} mm over {rival.Gaps}. Counting the gaps would decide.";

    /// <summary>One gap would decide.</summary>
    public static string MeasureOneGap(SpanCandidate best, SpanCandidate rival) =>
        $"No standard pitch fits well; the nearest are {Number(best.PitchMm, 3)} and {Number(rival.PitchMm, 3)} mm. Measuring from the first to the last lead, middle to middle, would decide.";

    /// <summary>More lines than one mark may have.</summary>
    public static string ReadingCut(int lines, int kept) =>
        string.Create(CultureInfo.InvariantCulture, $"{lines} lines were read, and a mark has {kept} at most: the others are not kept here. Read one part by a box around it.");

    /// <summary>A length in mm with a sensible number of digits.</summary>
    public static string Mm(double mm) => Number(mm, Math.Abs(mm) < 0.1 ? 3 : 2) + " mm";

    /// <summary>A number with at most <paramref name="digits"/> decimals, culture invariant.</summary>
    public static string Number(double value, int digits) =>
        Math.Round(value, digits).ToString("0." + new string('#', digits), CultureInfo.InvariantCulture);

    /// <summary>Hostile text cut to what fits a sentence, control characters shown as '·'.</summary>
    public static string Quoted(string text)
    {
        var clean = new string([.. text.Take(60).Select(c => char.IsControl(c) ? '·' : c)]);
        return "“" + clean + (text.Length > 60 ? "…" : "") + "”";
    }
}
