namespace Lidoff.Telling.Documents;

/// <summary>A piece of running text.</summary>
public abstract record Inline
{
    private protected Inline()
    {
    }
}
