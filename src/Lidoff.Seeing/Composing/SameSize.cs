using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Composing;

/// <summary>Pictures of one camera place have one size.</summary>
internal static class SameSize
{
    /// <summary>Refuses pictures of different sizes, and ones too large to be held.</summary>
    public static void Check(IReadOnlyList<SourcePicture> pictures, long mostPixels)
    {
        var first = pictures[0].Header;
        foreach (var each in pictures)
        {
            if ((each.Header.Width, each.Header.Height) != (first.Width, first.Height))
            {
                throw new RefusedException(new Fault(each.Name, "pictures of one size", ComposingSentences.OtherSize(each.Name, each.Header.Width, each.Header.Height, first.Width, first.Height)));
            }
        }

        if ((long)first.Width * first.Height > mostPixels)
        {
            throw new RefusedException(new Fault(pictures[0].Name, "smaller pictures", ComposingSentences.TooLarge(pictures[0].Name, first.Width, first.Height, mostPixels)));
        }
    }
}
