namespace Lidoff.Seeing.Rendering.Invented;

/// <summary>One picture of the invented device: what is seen, and what is noted beside it.</summary>
/// <param name="Name">File name.</param>
/// <param name="Specimen">The specimen in it.</param>
/// <param name="Side">The side it shows: top, bottom, edge or other.</param>
/// <param name="Light">How it was lit, in words.</param>
/// <param name="Zoom">Zoom tag; pictures of one tag share a scale.</param>
/// <param name="About">The spot it is a close-up of; empty for a view of more.</param>
/// <param name="Scene">What is rendered.</param>
public sealed record Shot(string Name, string Specimen, string Side, string Light, string Zoom, string About, Scene Scene)
{
    /// <summary>What is true of it; nothing is rendered.</summary>
    public SceneTruth Truth => SceneTruth.Of(Scene);
}
