namespace Lidoff.Telling.Documents;

/// <summary>A block of a section. The set is closed; a writer that meets one it cannot write throws, and a test writes them all.</summary>
public abstract record Block
{
    private protected Block()
    {
    }
}
