using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Store;

/// <summary>The sentence for what a disk throws.</summary>
public static class FileTrouble
{
    // errno.h of Linux.
    private const int NoSpace = 28, Quota = 122, ReadOnlyDisk = 30;

    /// <summary>The fault for what reading or writing <paramref name="name"/> threw; a full disk and one that may not be written have sentences of their own.</summary>
    public static Fault Of(Exception trouble, string name) => trouble switch
    {
        IOException { HResult: var code } when (code & 0xFFFF) is NoSpace or Quota => StoreSentences.Full(name),
        IOException { HResult: var code } when (code & 0xFFFF) is ReadOnlyDisk => StoreSentences.ReadOnly(name),
        UnauthorizedAccessException => StoreSentences.ReadOnly(name),
        _ => StoreSentences.Trouble(name, trouble.Message),
    };
}
