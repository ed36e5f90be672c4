using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring.Edges;

namespace Lidoff.Seeing.Measuring.Rulers;

/// <summary>A straight row through a picture, along which and beside which brightness is taken every half pixel.</summary>
/// <param name="Grey">The picture.</param>
/// <param name="X">Where it begins, px of the picture's own.</param>
/// <param name="Y">Where it begins, px of the picture's own.</param>
/// <param name="Dx">Its direction, of length one.</param>
/// <param name="Dy">Its direction, of length one.</param>
/// <param name="Count">Number of steps.</param>
internal sealed record RulerTrack(GreyPicture Grey, double X, double Y, double Dx, double Dy, int Count)
{
    /// <summary>From one step to the next, px of the picture's own.</summary>
    public const double Step = 0.5;

    // Averaged over a few pixels across the row.
    private const int Across = 2;

    /// <summary>The row between two different places of the upright picture.</summary>
    public static RulerTrack Of(GreyPicture grey, PicturePoint from, PicturePoint to)
    {
        var length = from.DistanceTo(to) / grey.PxPerPx;
        return new(grey, from.X / grey.PxPerPx, from.Y / grey.PxPerPx, (to.X - from.X) / grey.PxPerPx / length, (to.Y - from.Y) / grey.PxPerPx / length, (int)(length / Step) + 1);
    }

    /// <summary>A place along the row, in steps, as one of the upright picture.</summary>
    public PicturePoint At(double steps) => new((X + (steps * Step * Dx)) * Grey.PxPerPx, (Y + (steps * Step * Dy)) * Grey.PxPerPx);

    /// <summary>Brightness along the row, so many px of the picture's own aside.</summary>
    public float[] Profile(double aside)
    {
        var profile = new float[Count];
        for (var i = 0; i < Count; i++)
        {
            for (var j = -Across; j <= Across; j++) profile[i] += Grey.Between(X + (i * Step * Dx) - ((j + aside) * Dy), Y + (i * Step * Dy) + ((j + aside) * Dx)) / ((2 * Across) + 1);
        }

        return profile;
    }

    /// <summary>A profile without slow changes of light.</summary>
    public static float[] Flat(float[] raw, int window)
    {
        var flat = new float[raw.Length];
        var sums = new double[raw.Length + 1];
        for (var i = 0; i < raw.Length; i++) sums[i + 1] = sums[i] + raw[i];
        for (var i = 0; i < raw.Length; i++)
        {
            var (low, high) = (Math.Max(0, i - window), Math.Min(raw.Length - 1, i + window));
            flat[i] = (float)(raw[i] - ((sums[high + 1] - sums[low]) / (high - low + 1)));
        }

        return flat;
    }
}
