using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Folding;

/// <summary>Which of two entries of different kinds came first.</summary>
public static class FoldOrder
{
    /// <summary>True when <paramref name="first"/> stands before <paramref name="second"/> in fold order; false when either is not here.</summary>
    public static bool Comes(this IDossierView view, EntryId first, EntryId second)
    {
        var seen = false;
        foreach (var folded in Guard.NotNull(view).Entries)
        {
            if (folded.Entry.Id == second) return seen;
            seen |= folded.Entry.Id == first;
        }

        return false;
    }
}
