namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>The band on both sides of a track, sampled: mean profiles across it, each of a short piece along, half a pixel apart.</summary>
internal sealed class EdgeBand
{
    /// <summary>Samples across, px.</summary>
    public const double Step = 0.5;

    private EdgeBand(double[] places, float[][] profiles, double half, double noise) => (Places, Profiles, Half, Noise) = (places, profiles, half, noise);

    /// <summary>Where along each piece lies.</summary>
    public double[] Places { get; }

    /// <summary>Brightness of each piece from −<see cref="Half"/> to <see cref="Half"/>.</summary>
    public float[][] Profiles { get; }

    /// <summary>How far it reaches across, px.</summary>
    public double Half { get; }

    /// <summary>Standard deviation of a value of a profile that is noise and grain, steps of 255.</summary>
    public double Noise { get; }

    /// <summary>Samples it.</summary>
    /// <param name="field">The picture.</param>
    /// <param name="track">Along what.</param>
    /// <param name="half">How far across, px.</param>
    /// <param name="piece">Length of a piece, px.</param>
    /// <param name="shift">Coefficients of the line that the band follows; zeros for the track itself.</param>
    public static EdgeBand Of(PixelField field, EdgeTrack track, double half, double piece, double[] shift)
    {
        var across = (int)Math.Round(half / Step);
        var count = Math.Max(1, (int)((track.To - track.From) / piece));
        var rows = Math.Max(1, (int)Math.Round((track.To - track.From) / count));
        var (places, profiles) = (new List<double>(count), new List<float[]>(count));
        Span<double> basis = stackalloc double[3];
        for (var i = 0; i < count; i++)
        {
            var middle = track.From + ((i + 0.5) * (track.To - track.From) / count);
            var profile = new float[(2 * across) + 1];
            var inside = true;
            for (var row = 0; row < rows && inside; row++)
            {
                var s = middle + ((row + 0.5 - (rows / 2.0)) * (track.To - track.From) / count / rows);
                track.Basis(s, basis);
                var off = 0.0;
                for (var k = 0; k < shift.Length; k++) off += shift[k] * basis[k];
                var (first, last) = (track.At(s, off - half), track.At(s, off + half));
                inside = field.Holds(first.X, first.Y) && field.Holds(last.X, last.Y);
                for (var k = 0; k < profile.Length && inside; k++)
                {
                    var share = k / (double)(profile.Length - 1);
                    profile[k] += field.At(first.X + (share * (last.X - first.X)), first.Y + (share * (last.Y - first.Y))) / rows;
                }
            }

            if (!inside) continue;
            places.Add(middle);
            profiles.Add(profile);
        }

        return new([.. places], [.. profiles], half, NoiseOf(profiles));
    }

    // Second differences a pixel apart leave out slopes; their median leaves out edges. Independent values make them √6 times as wide.
    private static double NoiseOf(List<float[]> profiles)
    {
        var differences = new List<double>();
        foreach (var profile in profiles) for (var k = 4; k < profile.Length; k += 2) differences.Add(Math.Abs(profile[k] - (2 * profile[k - 2]) + profile[k - 4]));
        if (differences.Count == 0) return 0;
        differences.Sort();
        return differences[differences.Count / 2] / (0.6745 * Math.Sqrt(6));
    }
}
