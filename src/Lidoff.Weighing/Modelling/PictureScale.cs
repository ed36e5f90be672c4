using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Weighing.Modelling;

/// <summary>
/// The known lengths of one picture, in fold order, whatever name of the picture they used. <paramref name="From"/> is the hash of the
/// picture they were noted in where this one was made of it; empty where they are its own.
/// </summary>
public sealed record PictureScale(ValueList<Sighting<ScaleSighting>> References, string From = "");
