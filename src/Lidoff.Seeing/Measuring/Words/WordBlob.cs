namespace Lidoff.Seeing.Measuring.Words;

/// <summary>One connected patch of ink that may be a letter: its pixels and its box along the looked-at direction, px.</summary>
internal sealed record WordBlob(IReadOnlyList<int> Pixels, double Left, double Top, double Right, double Bottom)
{
    /// <summary>Extent along the line.</summary>
    public double Width => Right - Left;

    /// <summary>Extent across the line.</summary>
    public double Height => Bottom - Top;

    /// <summary>Middle along the line.</summary>
    public double X => (Left + Right) / 2;

    /// <summary>Middle across the line.</summary>
    public double Y => (Top + Bottom) / 2;
}
