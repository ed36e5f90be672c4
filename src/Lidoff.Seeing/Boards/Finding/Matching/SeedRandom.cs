namespace Lidoff.Seeing.Boards.Finding.Matching;

/// <summary>Numbers at random from a seed, the same everywhere (Vigna's splitmix64).</summary>
internal sealed class SeedRandom(ulong seed)
{
    private ulong state = seed;

    /// <summary>One of 0 to <paramref name="count"/> − 1.</summary>
    public int Below(int count)
    {
        unchecked
        {
            var z = state += 0x9E3779B97F4A7C15UL;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return (int)((z ^ (z >> 31)) % (ulong)count);
        }
    }
}
