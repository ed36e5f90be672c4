namespace Lidoff.Weighing.Becauses;

/// <summary>What a step of a because is.</summary>
public enum BecauseSort
{
    /// <summary>The selected thing: a spot, a value, a claim.</summary>
    Thing,

    /// <summary>An entry it rests on.</summary>
    Entry,

    /// <summary>A stored file.</summary>
    File,
}
