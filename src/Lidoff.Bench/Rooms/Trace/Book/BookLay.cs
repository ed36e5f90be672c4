using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Lidoff.Evidence.Pictures;

namespace Lidoff.Bench.Rooms.Trace.Book;

/// <summary>How a page lies flat: from its units to the pixels of its picture.</summary>
/// <param name="Matrix">The map, from units right and down of the page's upper left corner.</param>
public sealed record BookLay(Matrix3 Matrix)
{
    /// <summary>Twelve digits that change with the map: a browser may keep the drawing under them.</summary>
    public string Stamp => Convert.ToHexStringLower(SHA256.HashData(Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{Matrix}"))))[..12];

    /// <summary>The same as a transform.</summary>
    public Projective ToPicture { get; } = new("page", "picture", Matrix);
}
