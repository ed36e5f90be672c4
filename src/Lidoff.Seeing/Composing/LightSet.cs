using Lidoff.Evidence.Working;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Vision;
using OpenCvSharp;

namespace Lidoff.Seeing.Composing;

/// <summary>
/// One place under light from several sides. What all pictures share is colour, what they differ in is relief: no light's direction has
/// to be known for that. Each picture is set against its own surroundings first, so that a lamp's fall-off is no relief.
/// </summary>
internal static class LightSet
{
    // All pictures are held at once as 32-bit sheets, 400 MB.
    private const long MostPixelsTogether = 100_000_000;

    /// <summary>Surroundings that brightness is set against: this share of the picture's width.</summary>
    private const double Around = 0.04;

    // A place in glare or in deep shadow would outvote every other picture.
    private const double Brightest = 2.5;

    public static Outcome<Composition> Make(ComposeOrder order, IJobReport report)
    {
        var pictures = order.Pictures;
        SameSize.Check(pictures, MostPixelsTogether / pictures.Count);
        var laid = LightAlignment.Of(pictures, report);
        List<Mat> lights = [];
        try
        {
            for (var k = 0; k < pictures.Count; k++)
            {
                report.Stop.ThrowIfCancellationRequested();
                report.Say(pictures.Count + k, pictures.Count * 2, ComposingSentences.Evening(pictures[k].Name));
                lights.Add(Evened(pictures[k], laid.Maps[k]));
            }

            using var contrast = LightMixing.Contrast(lights);
            using var relief = LightMixing.Relief(lights);
            return new Composition
            {
                Picture = Sheets.Png(contrast),
                Second = Sheets.Png(relief),
                Inputs = [.. pictures.Select(each => each.Sha256)],
                Settings = LightMixing.Settings,
                Program = VisionLibrary.Versions(),
                FirstAt = (0, 0),
                RestPx = laid.RestPx,
                Says = laid.Says,
            };
        }
        finally
        {
            lights.ForEach(light => light.Dispose());
        }
    }

    private static Mat Evened(SourcePicture picture, Similarity map)
    {
        using var grey = Sheets.Grey(picture, MostPixelsTogether).Grey;
        using var laid = map == Similarity.Identity ? grey.Clone() : Warps.Warp(grey, map, grey.Size(), InterpolationFlags.Cubic, BorderTypes.Replicate);
        using var wide = new Mat();
        laid.ConvertTo(wide, MatType.CV_32F, 1, 2);
        using var around = WideBlurs.Of(wide, Math.Max(8, Around * wide.Width));
        var even = new Mat();
        Cv2.Divide(wide, around, even);
        Cv2.Min(even, Brightest, even);
        return even;
    }
}
