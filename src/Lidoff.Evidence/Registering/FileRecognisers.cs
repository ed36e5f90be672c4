using System.Reflection;

namespace Lidoff.Evidence.Registering;

/// <summary>All recognisers at work on one file.</summary>
public sealed class FileRecognisers(Registry<IFileRecogniser> registry)
{
    /// <summary>Those of this room, and of any further <paramref name="assemblies"/>.</summary>
    public static FileRecognisers Found(params IEnumerable<Assembly> assemblies) =>
        new(Registry.Of<IFileRecogniser>([typeof(FileRecognisers).Assembly, .. assemblies]));

    /// <summary>Every recogniser, by name.</summary>
    public IReadOnlyList<IFileRecogniser> Items => registry.Items;

    /// <summary>The surest recogniser's word, or <see cref="RecognisedFile.Unrecognised"/>.</summary>
    public RecognisedFile Recognise(FileHead head)
    {
        var best = registry.Items.MaxBy(r => r.Look(head));
        return best is null || best.Look(head) == Recognition.No
            ? RecognisedFile.Unrecognised
            : new(best.Name, best.MediaType, best.Says, best.IsPicture);
    }

    /// <summary>Reads the beginning of a stream, which is left where it then stands.</summary>
    public RecognisedFile Recognise(Stream stream, string fileName)
    {
        var buffer = new byte[FileHead.Length + 1];
        var read = stream.ReadAtLeast(buffer, buffer.Length, throwOnEndOfStream: false);
        return Recognise(FileHead.Of(buffer.AsMemory(0, read), fileName));
    }
}
