using Lidoff.Bench.Working;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;

namespace Lidoff.Bench.Rooms.See.Laying;

/// <summary>What takes one proposed landmark over: a landmark in each picture that does not have it yet.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Places">Specimen, picture, place and its doubt, px.</param>
/// <param name="FoundBy">The match, as an entry.</param>
public sealed record LayLines(string Name, ValueList<(string Specimen, string Sha256, PicturePoint At, double UPx)> Places, string FoundBy)
{
    /// <summary>As lines.</summary>
    public IEnumerable<Line> Written() => Places.Select(place => Line.Of("landmark").Set("specimen", place.Specimen).Set("landmark", Name)
        .Set("picture", place.Sha256).Set("point", place.At.X, place.At.Y).Set("u_px", place.UPx).Set("found_by", FoundBy));
}
