using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Weighing.Modelling;

/// <summary>The known lengths of one picture, in fold order, whatever name of the picture they used.</summary>
public sealed record PictureScale(ValueList<Sighting<ScaleSighting>> References);
