using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Shapes;
using Lidoff.Seeing.Standards;

namespace Lidoff.Seeing.Boards;

/// <summary>Measures in a picture that lies on a board, by the board: the picture itself needs no known length.</summary>
public static class BoardMeasurement
{
    // As lengths by a picture's own scale: 10 nm.
    private const int Decimals = 5;

    // Heights are typed from drawings or estimated by eye, as with a picture's own scale.
    private const double HeightSpread = 0.05;

    /// <summary>Measures a length.</summary>
    /// <param name="board">A board that tells lengths.</param>
    /// <param name="sha256">A picture that lies on it.</param>
    /// <param name="target">What to measure.</param>
    /// <param name="clickPx">Standard uncertainty of each coordinate of an end, px.</param>
    /// <param name="frame">The picture's size.</param>
    public static Outcome<MeasuredLength> Length(LaidBoard board, string sha256, TargetLength target, double clickPx, PictureFrame frame)
    {
        Guard.NotNull(board);
        Guard.NotNull(target);
        var job = new MeasureJob { Image = sha256, References = [], Targets = [], ClickPx = clickPx };
        return JobChecks.Target(target, job, frame).Then<MeasuredLength>(_ => Measure(board, sha256, target, clickPx, frame));
    }

    /// <summary>Measures a circle, pitch, angle or area; an angle needs no known length on the board.</summary>
    /// <param name="board">A board, which tells lengths unless an angle is asked for.</param>
    /// <param name="sha256">A picture that lies on it.</param>
    /// <param name="target">What to measure.</param>
    /// <param name="clickPx">Standard uncertainty of each coordinate of a place, px.</param>
    /// <param name="frame">The picture's size.</param>
    public static Outcome<MeasuredShape> Shape(LaidBoard board, string sha256, TargetShape target, double clickPx, PictureFrame frame)
    {
        Guard.NotNull(board);
        Guard.NotNull(target);
        var faults = JobChecks.Shape(target, new MeasureJob { Image = sha256, References = [], Targets = [], ClickPx = clickPx }, frame);
        if (faults.Count > 0) return Outcome<MeasuredShape>.Failed(faults);
        var (flat, flatU, share) = board.Shape(sha256, target.Kind, target.Points, clickPx);
        if (!double.IsFinite(flat)) return new Fault("points", "places that make one", SeeingSentences.NoShape(target.Kind));
        var power = ShapeValue.Power(target.Kind);
        var chord = target.Longest();
        // An angle is the same at every height, and a board without a known length has nothing to tell a camera's distance by.
        var parts = power == 0 ? [(1, flat, flatU)] : Raised(flat, flatU, power, target.HeightMm, LongSide(frame, board.Length(sha256, chord.From, chord.To, 0).Mm, chord));
        var (value, u) = Middle(parts);
        var pitch = target.Kind == ShapeKind.Pitch;
        return new MeasuredShape(
            target.Id, target.Kind, Math.Round(value, Decimals), Math.Round(u, Decimals),
            Math.Round(NormalMixture.Quantile(parts, 0.05), Decimals), Math.Round(NormalMixture.Quantile(parts, 0.95), Decimals),
            share / flat, pitch ? ShapeValue.Comb([.. target.Points.Select(point => (point.X, point.Y))]).Gaps : 0, pitch ? StandardRank.Snap(value, u, StandardSizes.PitchSizes) : null,
            Warnings(power == 0 ? 0 : target.HeightMm, flat - value, frame));
    }

    private static MeasuredLength Measure(LaidBoard board, string sha256, TargetLength target, double clickPx, PictureFrame frame)
    {
        var flat = board.Length(sha256, target.From, target.To, clickPx);
        var parts = Raised(flat.Mm, flat.U, 1, target.HeightMm, LongSide(frame, flat.Mm, target));
        var (value, u) = Middle(parts);
        return new(
            target.Id, Math.Round(value, Decimals), Math.Round(u, Decimals),
            Math.Round(NormalMixture.Quantile(parts, 0.05), Decimals), Math.Round(NormalMixture.Quantile(parts, 0.95), Decimals),
            flat.ShareU / flat.Mm, StandardRank.Snap(value, u, StandardSizes.For(target.Id)), Warnings(target.HeightMm, flat.Mm - value, frame));
    }

    // What stands above the board is drawn larger by Z/(Z − h), an area by its square; how far the camera was is not known.
    private static List<(double Weight, double Mean, double Sd)> Raised(double flat, double u, int power, double heightMm, double longSideMm) => heightMm == 0
        ? [(1, flat, u)]
        :
        [
            .. CameraDistance.Unknown(longSideMm, heightMm).Ladder.Select(rung =>
            {
                var shrink = (rung.Mm - heightMm) / rung.Mm;
                var mean = flat * (power == 2 ? shrink * shrink : shrink);
                var height = power * HeightSpread * heightMm / (rung.Mm - heightMm);
                return (rung.Weight, mean, mean * Math.Sqrt((u / flat * (u / flat)) + (height * height)));
            }),
        ];

    private static double LongSide(PictureFrame frame, double mm, TargetLength along) => Math.Max(frame.Width, frame.Height) * mm / along.From.DistanceTo(along.To);

    private static (double Value, double U) Middle(List<(double Weight, double Mean, double Sd)> parts)
    {
        var value = parts.Sum(part => part.Weight * part.Mean);
        return (value, Math.Sqrt(parts.Sum(part => part.Weight * ((part.Sd * part.Sd) + ((part.Mean - value) * (part.Mean - value))))));
    }

    private static List<MeasureWarning> Warnings(double heightMm, double shift, PictureFrame frame)
    {
        var warnings = new List<MeasureWarning>();
        if (heightMm != 0) warnings.Add(new(WarningCodes.OtherPlane, SeeingSentences.OtherPlane(heightMm, Math.Abs(shift))));
        if (frame.Mirrored) warnings.Add(new(WarningCodes.Mirrored, SeeingSentences.Mirrored()));
        return warnings;
    }
}
