namespace Lidoff.Catalogue.Parts;

/// <summary>A register that tells the part: its address (0x9F stands for the command of that number on memories) and one value that it returns.</summary>
public sealed record IdentityRegister(int Register, long Value, Confidence Confidence)
{
    /// <summary>The bits that count; all of them unless the source says otherwise.</summary>
    public long Mask { get; init; } = -1;

    /// <summary>True when a value that was read back agrees in the bits that count.</summary>
    public bool Accepts(long read) => (read & Mask) == (Value & Mask);
}
