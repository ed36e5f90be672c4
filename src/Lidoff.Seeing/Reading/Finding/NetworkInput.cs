namespace Lidoff.Seeing.Reading.Finding;

/// <summary>How grey goes into the networks.</summary>
internal static class NetworkInput
{
    // As in training: an even grey stays even.
    private const double LeastSpread = 1e-3;

    /// <summary>Zero mean and unit spread.</summary>
    public static void Normalise(float[] grey)
    {
        double sum = 0, squares = 0;
        foreach (var value in grey) sum += value;
        var mean = sum / grey.Length;
        foreach (var value in grey) squares += (value - mean) * (value - mean);
        var spread = Math.Sqrt(squares / grey.Length) + LeastSpread;
        for (var i = 0; i < grey.Length; i++) grey[i] = (float)((grey[i] - mean) / spread);
    }

    /// <summary>The same in a larger sheet, 0 to the right and at the foot.</summary>
    public static float[] Padded(float[] grey, int width, int height, int toWidth, int toHeight)
    {
        if (width == toWidth && height == toHeight) return grey;
        var sheet = new float[toWidth * toHeight];
        for (var y = 0; y < height; y++) Array.Copy(grey, y * width, sheet, y * toWidth, width);
        return sheet;
    }
}
