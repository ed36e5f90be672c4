using Lidoff.Evidence.Working;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Vision;
using OpenCvSharp;

namespace Lidoff.Seeing.Composing;

/// <summary>
/// One picture out of slices of different focus, and the height of each place: the order of the slices is checked, each slice is laid on
/// the first (moving the focus changes the scale a little), and every place is taken from where it was sharpest.
/// </summary>
internal static class FocusStack
{
    private const long MostPixels = 25_000_000;

    public static Outcome<Composition> Make(ComposeOrder order, IJobReport report)
    {
        SameSize.Check(order.Pictures, MostPixels);
        var sequence = SliceOrder.Of(order.Pictures, report);
        var slices = sequence.Order.Select(i => order.Pictures[i]).ToList();
        var laid = SliceAlignment.Of(slices, report);
        var says = new List<string>();
        if (sequence.Repaired) says.Add(ComposingSentences.OrderRepaired([.. sequence.Order.Select(i => i + 1)]));
        if (laid.Breathing > 0.0005) says.Add(ComposingSentences.Breathing(laid.Breathing * 100));
        // Focus that runs one way changes the scale one way; where it turns back, a slice is not where it belongs.
        if (laid.TurnsBack is not null && sequence.Repaired) return new Fault("pictures", "slices in the order of their focus", ComposingSentences.OrderOpen());
        if (laid.TurnsBack is { } back) says.Add(ComposingSentences.ScaleTurnsBack(slices[back].Name));
        var depth = new SliceDepth(slices, laid.Maps, report).Find();
        using var index = depth.Index;
        if (depth.Textured < 0.5) says.Add(ComposingSentences.LittleTexture(depth.Textured * 100));
        using var picture = SliceFusing.Fuse(slices, laid.Maps, index, report);
        using var heights = new Mat();
        var top = slices.Count - 1;
        index.ConvertTo(heights, MatType.CV_16U, 65535.0 / top);
        return new Composition
        {
            Picture = Sheets.Png(picture),
            Second = Sheets.Png(heights),
            Inputs = [.. slices.Select(slice => slice.Sha256)],
            Settings = SliceDepth.Settings,
            Program = VisionLibrary.Versions(),
            // The first by focus, which is the first of the inputs as they are noted.
            FirstAt = (0, 0),
            RestPx = laid.RestPx,
            Heights = order.StepMm is { } step ? (0, step * top) : (1, slices.Count),
            HeightsInMm = order.StepMm is not null,
            Says = says,
        };
    }
}
