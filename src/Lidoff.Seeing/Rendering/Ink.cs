namespace Lidoff.Seeing.Rendering;

/// <summary>A colour, 0 to 255 a channel.</summary>
internal readonly record struct Ink(float R, float G, float B)
{
    public Ink Times(double factor) => new((float)(R * factor), (float)(G * factor), (float)(B * factor));
}
