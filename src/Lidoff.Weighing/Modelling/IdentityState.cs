namespace Lidoff.Weighing.Modelling;

/// <summary>
/// One of the things that may sit at a spot, exclusive of the others. <paramref name="Name"/> is the part's, or the family's for a
/// member of it that no list holds.
/// </summary>
internal sealed record IdentityState(IdentityState.Sort Kind, string Name)
{
    /// <summary>State of every listed part that is not among the candidates.</summary>
    internal const string Others = "another listed part";

    /// <summary>State of a part in no list.</summary>
    internal const string None = "not in any list";

    /// <summary>What a state is.</summary>
    internal enum Sort
    {
        /// <summary>A listed part.</summary>
        Part,

        /// <summary>A member of an accepted family that no list holds.</summary>
        Unlisted,

        /// <summary>Any other listed part.</summary>
        Others,

        /// <summary>A part in no list, of no accepted family.</summary>
        None,
    }

    /// <summary>The state in words.</summary>
    internal string Words => Kind switch
    {
        Sort.Part => Name,
        Sort.Unlisted => "family " + Name + ", a member in no list",
        Sort.Others => Others,
        _ => None,
    };
}
