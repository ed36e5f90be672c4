using System.Globalization;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Advising;

namespace Lidoff.Bench.Rooms.See.Advising;

/// <summary>A shot's plan in words: what to set, and where the scale must lie.</summary>
public static class ShotSentences
{
    /// <summary>The plan, in the order in which it is set up.</summary>
    public static IReadOnlyList<string> Of(ShotPlan plan)
    {
        Guard.NotNull(plan);
        return
        [
            plan.FramesAlong == 1
                ? Say($"One frame is enough: {plan.PxPerMm:0.#} px/mm, {plan.NeedPxPerMm:0.#} are needed ({ShotPlan.LetterPx:0} px a letter).")
                : Say($"One frame has {plan.OneFramePxPerMm:0.#} px/mm of the {plan.NeedPxPerMm:0.#} needed ({ShotPlan.LetterPx:0} px a letter): shoot {plan.FramesAlong} frames along the longer side, {plan.FrameMm:0.#} mm each with a quarter shared, or only where letters are."),
            plan.FNumber < 1
                ? Say($"At {plan.Magnification:0.##} times life size no lens opens wide enough: open it fully.")
                : Say($"Aperture about f/{plan.FNumber:0.#} as marked, at {plan.Magnification:0.##} times life size: closed further, diffraction blurs the letters."),
            plan.Slices == 1
                ? Say($"Sharp over {Depth(plan.DepthMm)}: one picture holds board and tops.")
                : Say($"Sharp over {Depth(plan.DepthMm)}: {plan.Slices} slices {Depth(plan.StepMm)} apart for board and tops, or focus on the plane that carries the letters."),
            plan.HeightError < 0.001
                ? "The scale lies on the board, beside what is measured, over half the frame or more, away from its rim."
                : Say($"The scale lies in the plane of what is measured, over half the frame or more, away from its rim: on the board, lengths on the tallest top read {plan.HeightError * 100:0.#} % too long. Say its height when you measure."),
        ];
    }

    /// <summary>What a picture at hand is good for.</summary>
    /// <param name="worth">What was found in it.</param>
    /// <param name="pxPerMm">Its scale, px/mm; null where nothing sets it.</param>
    public static IReadOnlyList<string> Of(PictureWorth worth, double? pxPerMm)
    {
        Guard.NotNull(worth);
        var says = new List<string>();
        if (pxPerMm is { } scale) says.Add(Say($"Letters of {worth.LetterMm(scale):0.00} mm and taller can be read."));
        if (worth.EdgePx is null) says.Add("No edge is strong enough to tell how sharp it is.");
        else if (worth.EdgePx > PictureWorth.SharpPx) says.Add(Say($"Blurred: its sharpest edges are {worth.EdgePx:0.#} px wide, so it shows no more than a sharp one with {PictureWorth.SharpPx / worth.EdgePx * 100:0} % of its px/mm. Focus, steadier stand, or less enlargement by the camera's program."));
        else says.Add(Say($"Sharp: edges {worth.EdgePx:0.#} px wide."));
        if (worth.Burnt > 0.02) says.Add(Say($"{worth.Burnt * 100:0} % is burnt out: laser marks vanish in glare. Diffuse or polarise the light, or expose less."));
        return says;
    }

    private static string Depth(double mm) => mm < 1 ? Say($"{mm * 1000:0} µm") : Say($"{mm:0.0} mm");

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
