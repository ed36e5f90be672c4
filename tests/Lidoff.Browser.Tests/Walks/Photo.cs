using System.Globalization;
using System.Text;
using NetVips;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>A telephone's picture of <see cref="Files.Ruled"/> that says who owns it, where it was and which camera it is; and whether something else says so.</summary>
internal static class Photo
{
    private const string Owner = "Wilhelmina Seacrow", Serial = "SN-4471-0093";

    private static readonly Lazy<byte[]> Made = new(Make);

    /// <summary>A JPEG file.</summary>
    public static byte[] Bytes => Made.Value;

    /// <summary>Fails where <paramref name="bytes"/> hold the owner's name, the camera's serial number or <paramref name="more"/> in clear.</summary>
    public static void NothingIn(byte[] bytes, params string[] more)
    {
        var text = Encoding.Latin1.GetString(bytes);
        foreach (var word in (string[])["Seacrow", "Wilhelmina", Serial, .. more]) Assert.DoesNotContain(word, text, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>Fails where a picture carries EXIF, XMP or IPTC data, as another's decoder finds them.</summary>
    public static void NoTags(byte[] picture)
    {
        using var image = Image.NewFromBuffer(picture);
        Assert.DoesNotContain(image.GetFields(), field => field.StartsWith("exif", StringComparison.Ordinal) || field.StartsWith("xmp", StringComparison.Ordinal) || field.StartsWith("iptc", StringComparison.Ordinal));
    }

    private static byte[] Make()
    {
        using var plain = Image.NewFromBuffer(Files.Ruled);
        using var tagged = plain.Mutate(picture =>
        {
            picture.Set(GValue.GStrType, "exif-ifd0-Artist", Ascii(Owner));
            picture.Set(GValue.GStrType, "exif-ifd2-BodySerialNumber", Ascii(Serial));
            picture.Set(GValue.GStrType, "exif-ifd3-GPSLatitude", "51/1 2/1 3/1 (51, 2, 3, Rational, 3 components, 24 bytes)");
        });
        var photo = tagged.JpegsaveBuffer(q: 95, subsampleMode: Enums.ForeignSubsample.Off);
        var text = Encoding.Latin1.GetString(photo);
        Assert.True(text.Contains(Owner, StringComparison.Ordinal) && text.Contains(Serial, StringComparison.Ordinal), "the picture that goes in must hold what may not come out");
        return photo;
    }

    private static string Ascii(string text) => string.Create(CultureInfo.InvariantCulture, $"{text} ({text}, ASCII, {text.Length + 1} components, {text.Length + 1} bytes)");
}
