using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Kinds;

/// <summary>Reads the two ends of a length in a picture.</summary>
internal static class Ends
{
    /// <summary>Both ends; faults, also for ends that fall together, go to the reader.</summary>
    public static (PicturePoint From, PicturePoint To) Read(PayloadReader reader)
    {
        var (fromX, fromY) = reader.Point("from");
        var (toX, toY) = reader.Point("to");
        if (fromX == toX && fromY == toY) reader.Fail("to", "another place than \"from\": between equal places there is no length");
        return (new(fromX, fromY), new(toX, toY));
    }
}
