namespace Lidoff.Seeing.Pictures;

/// <summary>Brightness of colours by ITU-R BT.601: 0.299 red, 0.587 green, 0.114 blue.</summary>
internal static class Luma
{
    /// <summary>Brightness, 0 to 255, of each pixel of bytes that lie band by band; a grey picture has one band or, with alpha, two.</summary>
    public static float[] Of(byte[] bytes, int bands)
    {
        var values = new float[bytes.Length / bands];
        for (var i = 0; i < values.Length; i++)
        {
            var at = i * bands;
            // In whole numbers: the same values on every machine.
            values[i] = bands < 3 ? bytes[at] : ((299 * bytes[at]) + (587 * bytes[at + 1]) + (114 * bytes[at + 2])) / 1000f;
        }

        return values;
    }
}
