using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Standards;

namespace Lidoff.Seeing.Boards;

/// <summary>Measures in a picture that lies on a board, by the board: the picture itself needs no known length.</summary>
public static class BoardMeasurement
{
    // As lengths by a picture's own scale: 10 nm.
    private const int Decimals = 5;

    // Heights are typed from drawings or estimated by eye, as with a picture's own scale.
    private const double HeightSpread = 0.05;

    /// <summary>Measures.</summary>
    /// <param name="board">A board that tells lengths.</param>
    /// <param name="sha256">A picture that lies on it.</param>
    /// <param name="target">What to measure.</param>
    /// <param name="clickPx">Standard uncertainty of each coordinate of an end, px.</param>
    /// <param name="frame">The picture's size.</param>
    public static Outcome<MeasuredLength> Run(LaidBoard board, string sha256, TargetLength target, double clickPx, PictureFrame frame)
    {
        Guard.NotNull(board);
        Guard.NotNull(target);
        var job = new MeasureJob { Image = sha256, References = [], Targets = [], ClickPx = clickPx };
        return JobChecks.Target(target, job, frame).Then<MeasuredLength>(_ => Measure(board, sha256, target, clickPx, frame));
    }

    private static MeasuredLength Measure(LaidBoard board, string sha256, TargetLength target, double clickPx, PictureFrame frame)
    {
        var flat = board.Length(sha256, target.From, target.To, clickPx);
        var warnings = new List<MeasureWarning>();
        List<(double Weight, double Mean, double Sd)> parts = [(1, flat.Mm, flat.U)];
        if (target.HeightMm != 0)
        {
            // What stands above the board is drawn larger by Z/(Z − h); how far the camera was is not known.
            var longSide = Math.Max(frame.Width, frame.Height) * flat.Mm / target.From.DistanceTo(target.To);
            parts =
            [
                .. CameraDistance.From(null, longSide, target.HeightMm).Ladder.Select(rung =>
                {
                    var mean = flat.Mm * (rung.Mm - target.HeightMm) / rung.Mm;
                    var height = HeightSpread * target.HeightMm / (rung.Mm - target.HeightMm);
                    return (rung.Weight, mean, mean * Math.Sqrt((flat.U / flat.Mm * (flat.U / flat.Mm)) + (height * height)));
                }),
            ];
        }

        var value = parts.Sum(part => part.Weight * part.Mean);
        var u = Math.Sqrt(parts.Sum(part => part.Weight * ((part.Sd * part.Sd) + ((part.Mean - value) * (part.Mean - value)))));
        if (target.HeightMm != 0) warnings.Add(new(WarningCodes.OtherPlane, SeeingSentences.OtherPlane(target.HeightMm, Math.Abs(flat.Mm - value))));
        if (frame.Mirrored) warnings.Add(new(WarningCodes.Mirrored, SeeingSentences.Mirrored()));
        return new(
            target.Id, Math.Round(value, Decimals), Math.Round(u, Decimals),
            Math.Round(NormalMixture.Quantile(parts, 0.05), Decimals), Math.Round(NormalMixture.Quantile(parts, 0.95), Decimals),
            flat.ShareU / flat.Mm, StandardRank.Snap(value, u, StandardSizes.For(target.Id)), warnings);
    }
}
