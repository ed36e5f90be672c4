using Lidoff.Evidence.Folding;

namespace Lidoff.Telling.Dossiers;

/// <summary>
/// What was read off a dossier's view, kept until the next one: several parts of one page ask for the same, and a view never changes.
/// </summary>
/// <typeparam name="T">What it is.</typeparam>
/// <param name="make">Reads it off the present view.</param>
internal sealed class PerView<T>(Func<IDossierView, T> make)
    where T : class
{
    private (IDossierView View, T Value)? known;

    /// <summary>What it is in <paramref name="view"/>.</summary>
    public T In(IDossierView view)
    {
        if (known is { } kept && ReferenceEquals(kept.View, view)) return kept.Value;
        var value = make(view);
        known = (view, value);
        return value;
    }
}
