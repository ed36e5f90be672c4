using System.Globalization;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Advising;

namespace Lidoff.Bench.Rooms.See.Advising;

/// <summary>
/// A shot's plan in words: what to set, and where the scale must lie. What follows from typed numbers alone stands as it is, what rests on
/// judgements or on an idea of the lens with "about" and two digits.
/// </summary>
public static class ShotSentences
{
    /// <summary>The plan, in the order in which it is set up.</summary>
    public static IReadOnlyList<string> Of(ShotPlan plan)
    {
        Guard.NotNull(plan);
        return
        [
            plan.FramesAlong == 1
                ? Say($"One frame is enough: {plan.PxPerMm:0.#} px/mm, about {Two(plan.NeedPxPerMm)} are needed ({ShotPlan.LetterPx:0} px a letter).")
                : Say($"One frame has {plan.OneFramePxPerMm:0.#} px/mm of about {Two(plan.NeedPxPerMm)} needed ({ShotPlan.LetterPx:0} px a letter): shoot {plan.FramesAlong} frames along the longer side, about {Two(plan.FrameMm)} mm each with a quarter shared, or only where letters are."),
            plan.FNumber < 1
                ? Say($"At about {Two(plan.Magnification)} times life size no lens opens wide enough: open it fully.")
                : Say($"Aperture about f/{Two(plan.FNumber)} as marked, at about {Two(plan.Magnification)} times life size: closed further, diffraction blurs the letters."),
            plan.Slices == 1
                ? Say($"Sharp over about {Depth(plan.DepthMm)}: one picture holds board and tops.")
                : Say($"Sharp over about {Depth(plan.DepthMm)}: {plan.Slices} slices about {Depth(plan.StepMm)} apart for board and tops, or focus on the plane that carries the letters."),
            plan.HeightError < 0.001
                ? "The scale lies on the board, beside what is measured, over half the frame or more, away from its rim."
                : Say($"The scale lies in the plane of what is measured, over half the frame or more, away from its rim: on the board, lengths on the tallest top read about {Two(plan.HeightError * 100)} % too long. Say its height when you measure."),
        ];
    }

    /// <summary>What a picture at hand is good for.</summary>
    /// <param name="worth">What was found in it.</param>
    /// <param name="pxPerMm">Its scale, px/mm; null where nothing sets it.</param>
    public static IReadOnlyList<string> Of(PictureWorth worth, double? pxPerMm)
    {
        Guard.NotNull(worth);
        var says = new List<string>();
        if (pxPerMm is { } scale) says.Add(Say($"Letters of about {Two(worth.LetterMm(scale))} mm and taller can be read."));
        if (worth.EdgePx is null) says.Add("No edge is strong enough to tell how sharp it is.");
        else if (worth.EdgePx > PictureWorth.SharpPx) says.Add(Say($"Blurred: its sharpest edges are about {Two(worth.EdgePx.Value)} px wide, so it shows no more than a sharp one with about {Two(PictureWorth.SharpPx / worth.EdgePx.Value * 100)} % of its px/mm. Focus, steadier stand, or less enlargement by the camera's program."));
        else says.Add(Say($"Sharp: edges about {Two(worth.EdgePx.Value)} px wide."));
        if (worth.Burnt > 0.02) says.Add(Say($"About {Two(worth.Burnt * 100)} % is burnt out: laser marks vanish in glare. Diffuse or polarise the light, or expose less."));
        return says;
    }

    private static string Depth(double mm) => mm < 1 ? Say($"{Two(mm * 1000)} µm") : Say($"{Two(mm)} mm");

    // What rests on judgements and on a thin lens carries no third digit.
    private static string Two(double value)
    {
        var decimals = 1 - int.Parse(value.ToString("E1", CultureInfo.InvariantCulture).AsSpan(4), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        if (decimals >= 0) return value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        var place = Math.Pow(10, -decimals);
        return (Math.Round(value / place) * place).ToString("F0", CultureInfo.InvariantCulture);
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
