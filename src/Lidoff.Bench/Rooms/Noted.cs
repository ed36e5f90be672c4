using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;

namespace Lidoff.Bench.Rooms;

/// <summary>A stored sighting with its entry, so that it can be corrected in its place or taken back.</summary>
/// <param name="Entry">Its entry.</param>
/// <param name="Specimen">The specimen it was seen on; empty where none was named.</param>
/// <param name="Value">What was stored.</param>
/// <typeparam name="T">What was stored.</typeparam>
public sealed record Noted<T>(EntryId Entry, string Specimen, T Value)
    where T : class
{
    /// <summary>All live ones of a dossier, in fold order.</summary>
    public static ValueList<Noted<T>> All(IDossierView view) => [.. view.Live<T>().Select(each => new Noted<T>(each.Id, each.Specimen, each.Value))];

    /// <summary>The newest of each name, in natural order of the names.</summary>
    public static ValueList<Noted<T>> Newest(IDossierView view, Func<T, string> name) => [.. view.Newest(name).Select(each => new Noted<T>(each.Id, each.Specimen, each.Value))];
}
