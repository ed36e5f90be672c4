using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Advising;

/// <summary>
/// How to shoot it: scale, frames, aperture, slices, and what parts above the board's plane do to lengths. Thin-lens optics, one plane in
/// focus; figures to set a camera by, not to measure with.
/// </summary>
public sealed record ShotPlan
{
    /// <summary>A letter that tall can be told from its look-alikes; below 12 it cannot. A judgement, no source.</summary>
    public const double LetterPx = 15;

    /// <summary>Share of a frame that its neighbour shows too, so that a stitch holds. A judgement, no source: common practice is 20 to 30 %.</summary>
    public const double Overlap = 0.25;

    /// <summary>Focus steps are three quarters of the sharp depth, so that every height is sharp in one slice at least. A judgement, no source: common practice is 0.7 to 0.8.</summary>
    public const double Step = 0.75;

    // Green light, where eyes and sensors see best (the CIE's photopic maximum is 0.555 µm).
    private const double WavelengthUm = 0.55;

    // The Airy disc up to its first dark ring is 2.44·λ·N wide (Born and Wolf, Principles of Optics, 8.5.2). At two pixels' width it costs no
    // detail that the sensor could keep, since a detail takes two pixels (the sampling theorem): a judgement, others take 2.5.
    private const double AiryPx = 2;
    private const double AiryDiameter = 2.44;

    private ShotPlan()
    {
    }

    /// <summary>Scale that the letters need, px/mm.</summary>
    public required double NeedPxPerMm { get; init; }

    /// <summary>Scale when the field just fills the frame, px/mm.</summary>
    public required double OneFramePxPerMm { get; init; }

    /// <summary>Longest stretch of board that one frame may show, mm.</summary>
    public required double FrameMm { get; init; }

    /// <summary>Frames along the longer side, with their overlap; 1 where one frame will do.</summary>
    public required int FramesAlong { get; init; }

    /// <summary>Scale at which it is shot: the coarser of the two that is fine enough, px/mm.</summary>
    public required double PxPerMm { get; init; }

    /// <summary>Size on the sensor over size on the board.</summary>
    public required double Magnification { get; init; }

    /// <summary>Largest f-number as marked on the lens before diffraction softens letters; below 1 no lens opens so wide.</summary>
    public required double FNumber { get; init; }

    /// <summary>Depth that is sharp at that aperture, mm.</summary>
    public required double DepthMm { get; init; }

    /// <summary>Slices of a focus stack from the board to the tallest top; 1 where one picture will do.</summary>
    public required int Slices { get; init; }

    /// <summary>Distance between slices, mm.</summary>
    public required double StepMm { get; init; }

    /// <summary>By what share a length on the tallest top reads too long against a scale on the board.</summary>
    public required double HeightError { get; init; }

    /// <summary>The plan for what is asked; every value out of its range is a fault.</summary>
    public static Outcome<ShotPlan> Of(ShotAsk ask)
    {
        Guard.NotNull(ask);
        List<Fault> faults =
        [
            .. Out("letter", ask.LetterMm, 0.02, 50, "mm"), .. Out("field", ask.FieldMm, 0.1, 2000, "mm"), .. Out("camera", ask.CameraPx, 100, 100_000, "px"),
            .. Out("pixel", ask.PixelUm, 0.3, 50, "µm"), .. Out("relief", ask.ReliefMm, 0, 200, "mm"), .. Out("distance", ask.DistanceMm, 5, 5000, "mm"),
        ];
        if (faults.Count == 0 && ask.ReliefMm >= ask.DistanceMm) faults.Add(SeeingSentences.LensInTheParts(ask.ReliefMm, ask.DistanceMm));
        if (faults.Count > 0) return Outcome<ShotPlan>.Failed(faults);

        var (need, one) = (LetterPx / ask.LetterMm, ask.CameraPx / ask.FieldMm);
        var frames = one >= need ? 1 : (int)Math.Ceiling(((ask.FieldMm * need) - (Overlap * ask.CameraPx)) / ((1 - Overlap) * ask.CameraPx));
        var scale = frames == 1 ? one : need;
        var m = scale * ask.PixelUm / 1000;
        // As the sensor sees it, a lens at magnification m is (1 + m) times as slow as marked (thin lens, pupils of equal size).
        var seen = AiryPx * ask.PixelUm / (AiryDiameter * WavelengthUm);
        var aperture = m / (2 * seen);
        var depthUm = Depth(aperture, m, ask.PixelUm);
        var (depth, step) = (depthUm / 1000, Step * depthUm / 1000);
        return new ShotPlan
        {
            NeedPxPerMm = need, OneFramePxPerMm = one, FrameMm = ask.CameraPx / need, FramesAlong = frames, PxPerMm = scale, Magnification = m, FNumber = seen / (1 + m),
            DepthMm = depth, StepMm = step, Slices = ask.ReliefMm <= depth ? 1 : (int)Math.Ceiling(ask.ReliefMm / step) + 1, HeightError = ask.ReliefMm / (ask.DistanceMm - ask.ReliefMm),
        };
    }

    /// <summary>
    /// Sharp depth on the board's side, µm: λ/A² for the wave (a quarter of a wavelength at the rim at either end: Born and Wolf, 8.8), and a
    /// pixel seen through the lens, p/(m·A), for the sensor; A is the numerical aperture on the board's side. Their sum is that of
    /// microscopyu.com, Depth of Field Calculator, formula 1.
    /// </summary>
    internal static double Depth(double aperture, double magnification, double pixelUm) => (WavelengthUm / (aperture * aperture)) + (pixelUm / (magnification * aperture));

    private static IEnumerable<Fault> Out(string what, double value, double least, double most, string unit)
    {
        if (!(value >= least && value <= most)) yield return SeeingSentences.ShotOutOfRange(what, value, least, most, unit);
    }
}
