using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Fixtures;

/// <summary>How a window looks at a page: its size in CSS pixels, and light or dark.</summary>
public sealed record Look(int Width, int Height, ColorScheme Colours)
{
    /// <summary>A desk's screen.</summary>
    public static Look Wide { get; } = new(1440, 900, ColorScheme.Light);

    /// <summary>A narrow window beside the microscope's, or a phone.</summary>
    public static Look Narrow { get; } = new(390, 844, ColorScheme.Light);

    /// <summary>Every look that every page must bear.</summary>
    public static IReadOnlyList<Look> All { get; } = [Wide, Wide.Dark, Narrow, Narrow.Dark];

    /// <summary>The same in the dark.</summary>
    public Look Dark => this with { Colours = ColorScheme.Dark };

    /// <summary>For test names and screenshots.</summary>
    public override string ToString() => Width + (Colours == ColorScheme.Dark ? " dark" : " light");
}
