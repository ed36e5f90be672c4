using System.Globalization;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Cameras;

namespace Lidoff.Seeing.Kinds;

/// <summary>
/// What a machine saw in a picture besides anything pointed at, looked at once: what its straight edges say of the camera, and whether its
/// words read mirrored. Files are named by content hash.
/// </summary>
/// <param name="Picture">The picture.</param>
/// <param name="Edges">
/// Direction of the first family of lines (radians), convergence along x and y per half long side, excess of the angle between the families
/// over a right one (radians), bend of the lens at half a long side; empty where the edges are not those of a board.
/// </param>
/// <param name="Covariance">Lower triangle of the covariance of the last four of <paramref name="Edges"/>, row by row; empty with them.</param>
/// <param name="WordsMirrored">True when its words read mirrored.</param>
/// <param name="Program">Version of the program that looked.</param>
public sealed record LookSighting(string Picture, ValueList<double> Edges, ValueList<double> Covariance, bool WordsMirrored, string Program)
{
    // Beyond this nothing is known anyway: a machine's last digits are its own.
    private const string Digits = "G6";

    /// <summary>What a look saw, its numbers rounded.</summary>
    public static LookSighting Of(string sha256, PictureLook look, string program)
    {
        Guard.NotNull(look);
        return new(sha256, look.Slant is { } slant ? Rounded([slant.Turn, .. slant.Seen]) : [], look.Slant is { } same ? Rounded(same.Lower()) : [], look.WordsMirrored, program);
    }

    private static ValueList<double> Rounded(IEnumerable<double> values) =>
        [.. values.Select(value => double.Parse(value.ToString(Digits, CultureInfo.InvariantCulture), CultureInfo.InvariantCulture))];

    /// <summary>The same as measuring takes it.</summary>
    public PictureLook Look => new(Edges.Count == 0 ? null : PictureSlant.Of(Edges[0], [.. Edges.Skip(1)], Covariance), WordsMirrored);
}
