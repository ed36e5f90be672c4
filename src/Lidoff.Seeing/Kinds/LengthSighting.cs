using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Kinds;

/// <summary>
/// A length of something: <paramref name="What"/> says which ("width", "span of 14 leads"). Either two ends in a picture, or a value
/// from an instrument; exactly one of <paramref name="InPicture"/> and <paramref name="ByInstrument"/> is there.
/// </summary>
public sealed record LengthSighting(string Spot, string What, PictureLength? InPicture, InstrumentLength? ByInstrument);
