namespace Lidoff.Evidence.Registering;

/// <summary>Tells one kind of file by its content. The name may tip the scale between shapes, never decide alone.</summary>
public interface IFileRecogniser : INamed
{
    /// <summary>Media type it is served under, lower case. Never one that a browser would run.</summary>
    string MediaType { get; }

    /// <summary>The kind in words for people, with its article: "a JPEG picture".</summary>
    string Says { get; }

    /// <summary>True for pictures this program may try to open.</summary>
    bool IsPicture { get; }

    /// <summary>Looks at the file's beginning.</summary>
    Recognition Look(FileHead head);
}
