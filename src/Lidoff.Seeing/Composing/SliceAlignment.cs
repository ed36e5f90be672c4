using Lidoff.Evidence.Working;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Vision;
using OpenCvSharp;

namespace Lidoff.Seeing.Composing;

/// <summary>Lays each slice on the first: neighbours look alike, so each is laid on the one before it and on the one before that.</summary>
internal sealed record SliceAlignment(IReadOnlyList<Similarity> Maps, double RestPx, double Breathing, int? TurnsBack)
{
    private const double WorkPixels = 1_500_000;
    private static readonly BlockAlignment Laying = new(Side: 64, MostBlocks: 160, Reach: 20, NextReach: 4, Rounds: 3, Alike: 0.7, Soft: 0.5);

    /// <summary>Maps from each slice to the first one, px of the pictures.</summary>
    public static SliceAlignment Of(IReadOnlyList<SourcePicture> slices, IJobReport report)
    {
        List<Similarity> maps = [Similarity.Identity];
        List<double> rests = [];
        var (before, times) = Sheets.Grey(slices[0], WorkPixels);
        Mat? second = null;
        for (var k = 1; k < slices.Count; k++)
        {
            report.Stop.ThrowIfCancellationRequested();
            report.Say(slices.Count + k, slices.Count * 4, ComposingSentences.Laying(slices[k].Name));
            var now = Sheets.Grey(slices[k], WorkPixels).Grey;
            var near = Between(before, now, Similarity.Identity) ?? throw new RefusedException(new Fault(slices[k].Name, "a camera that stood still", ComposingSentences.SliceElsewhere(slices[k].Name, slices[k - 1].Name)));
            var onFirst = maps[^1].After(near.Map);
            if (second is not null && Between(second, now, maps[^2].Inverse().After(onFirst)) is { } far)
            {
                // Two ways to the same slice: half of what they differ by is what each drifted.
                var other = maps[^2].After(far.Map);
                onFirst = new((onFirst.A + other.A) / 2, (onFirst.B + other.B) / 2, (onFirst.X + other.X) / 2, (onFirst.Y + other.Y) / 2);
            }

            maps.Add(onFirst);
            rests.Add(near.Rms);
            second?.Dispose();
            (second, before) = (before, now);
        }

        second?.Dispose();
        before.Dispose();
        var scales = maps.Select(map => map.Scale).ToArray();
        return new([.. maps.Select(map => map.Finer(times))], Math.Sqrt(rests.Average(rest => rest * rest)) * times, scales.Max() - scales.Min(), Turn(scales));
    }

    private static (Similarity Map, double Rms)? Between(Mat before, Mat now, Similarity guess) => Laying.Of(before, now, guess, (_, found) => found / 3);

    /// <summary>The slice at which a scale that ran one way turns back by more than a tenth of its whole way; null where it never does.</summary>
    private static int? Turn(double[] scales)
    {
        var way = scales[^1] - scales[0];
        if (Math.Abs(way) < 0.001) return null;
        for (var k = 1; k < scales.Length; k++) if ((scales[k] - scales[k - 1]) * Math.Sign(way) < -0.1 * Math.Abs(way)) return k;
        return null;
    }
}
