using System.Buffers.Binary;
using System.Text;

namespace Lidoff.Evidence.Registering.Recognising;

/// <summary>The brands in the file type box that ISO base media files open with (ISO/IEC 14496-12, 4.3).</summary>
internal static class MediaBrands
{
    public static bool Any(FileHead head, params ReadOnlySpan<string> wanted)
    {
        if (!head.StartsWith("ftyp"u8, at: 4)) return false;
        var bytes = head.Bytes.Span;
        var end = (int)Math.Min(BinaryPrimitives.ReadUInt32BigEndian(bytes), (uint)bytes.Length);
        // Major brand at 8, its version at 12, compatible brands from 16 on.
        for (var at = 8; at + 4 <= end; at += at == 8 ? 8 : 4)
            if (wanted.Contains(Encoding.ASCII.GetString(bytes.Slice(at, 4)))) return true;
        return false;
    }
}
