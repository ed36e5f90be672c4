using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Telling.Drawing.Labelling;

/// <summary>A picture and all that is drawn on it, apart from the dossier it came from.</summary>
/// <param name="Path">Where its file lies.</param>
/// <param name="Name">Its name, for sentences; hostile text.</param>
/// <param name="Spots">What was pointed at.</param>
/// <param name="Scale">Its scale; null where none is known.</param>
/// <param name="Words">Title, credit, licence and notice.</param>
public sealed record PictureToLabel(string Path, string Name, ValueList<PictureSpot> Spots, BarScale? Scale, PictureWords Words)
{
    /// <summary>Draws it: decodes the picture and lays the letters out.</summary>
    public Outcome<LabelledPicture> Draw() => LabelledPicture.Of(Path, Name, Spots, Scale, Words);
}
