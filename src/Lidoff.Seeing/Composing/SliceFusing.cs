using Lidoff.Evidence.Working;
using Lidoff.Seeing.Vision;
using OpenCvSharp;

namespace Lidoff.Seeing.Composing;

/// <summary>Takes each place from the two slices around its height, in proportion; one slice is in memory at a time.</summary>
internal static class SliceFusing
{
    public static Mat Fuse(IReadOnlyList<SourcePicture> slices, IReadOnlyList<Similarity> maps, Mat index, IJobReport report)
    {
        using var sum = new Mat(index.Size(), MatType.CV_32FC3, Scalar.All(0));
        var rows = index.Rows;
        for (var k = 0; k < slices.Count; k++)
        {
            report.Stop.ThrowIfCancellationRequested();
            report.Say((slices.Count * 3) + k, slices.Count * 4, ComposingSentences.Fusing(slices[k].Name));
            using var colour = Sheets.Colour(slices[k]);
            using var laid = k == 0 ? colour.Clone() : Warps.Warp(colour, maps[k], index.Size(), InterpolationFlags.Cubic, BorderTypes.Replicate);
            for (var y = 0; y < rows; y++)
            {
                var at = index.RowSpan<float>(y);
                var from = laid.RowSpan<Vec3b>(y);
                var into = sum.RowSpan<Vec3f>(y);
                for (var x = 0; x < at.Length; x++)
                {
                    var share = 1 - Math.Abs(at[x] - k);
                    if (share <= 0) continue;
                    into[x] = new(into[x].Item0 + (share * from[x].Item0), into[x].Item1 + (share * from[x].Item1), into[x].Item2 + (share * from[x].Item2));
                }
            }
        }

        var picture = new Mat();
        sum.ConvertTo(picture, MatType.CV_8U);
        return picture;
    }
}
