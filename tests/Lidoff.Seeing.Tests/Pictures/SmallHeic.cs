using System.Buffers.Binary;

namespace Lidoff.Seeing.Tests.Pictures;

/// <summary>
/// A HEIC of 320 × 240 px made from a drawing of ours (ground 40,90,160; a block 220,40,41 at the upper left, a block 240,230,60 at
/// the lower right) with the encoder of libheif 1.15.1 (heif-enc -q 70). Variants are made by changing single bytes of its boxes.
/// </summary>
internal static class SmallHeic
{
    private const string Stored =
        "AAAAHGZ0eXBoZWljAAAAAG1pZjFoZWljbWlhZgAAAYBtZXRhAAAAAAAAACFoZGxyAAAAAAAAAABwaWN0AAAAAAAAAAAAAAAAAAAAAA5waXRtAAAAAAABAAAANGlsb2MAAAAAREAAAgABAAAAAAGkAA" +
        "EAAAAAAAADCgACAAAAAASuAAEAAAAAAAAAuAAAADhpaW5mAAAAAAACAAAAFWluZmUCAAAAAAEAAGh2YzEAAAAAFWluZmUCAAABAAIAAEV4aWYAAAAAv2lwcnAAAAChaXBjbwAAAHVodmNDAQNwAAAA" +
        "AAAAAAAAPPAA/P34+AAADwMgAAEAGEABDAH//wNwAAADAJAAAAMAAAMAPLoCQCEAAQAoQgEBA3AAAAMAkAAAAwAAAwA8oAoIDxZbqSSmubAgAAADACAAAAMAISIAAQAHRAHBcrBiQAAAABRpc3BlAA" +
        "AAAAAAAUAAAADwAAAAEHBpeGkAAAAAAwgICAAAABZpcG1hAAAAAAAAAAEAAQOBAoMAAAAaaXJlZgAAAAAAAAAOY2RzYwACAAEAAQAAA8ptZGF0AAADBigBrw7IJhqeTkAgsBjr2F31+0//+wt5plBT" +
        "7zb+S+APpkf4T88KmBf//R8qSjRRDLJYqfsUgNsVKP/zSHlERfRTrfJ6ialgMfLc5K3ej7g2G4XhpTzFBwfMdfGOtzg58uAIF+VrDK2Uhes8RM+E6nJSvuzf9O3HqBx5rIrQ+QwMnIU6ofpTvJtJfc" +
        "XH6vomM4m6DCS8KmfPorbnw/ditskPV4Pws8Vrwl0q0ixz3SOodOpxX50X6ZWgQ6rZ6JynNOeb8teekFCLTE/hQHcS6pHYB6zzJfWtWZMPsZwvdH2Yo90tZ2COsxRFXeegYSNtO1jwlVFpH4BuYkMR" +
        "sZ5s6zq8uOc+78X9l+AF0AAAAwAAAwAAAwAAWMDM9P9/uqmkFBeGDddg4qY9CV5oyGLpSQE4ml4lxXuo5tAFs2GaTiABVMbj/VWb8qLCdbx+40otsTh8Yrk2+QJlrbqFxqCR+aoTsl6QKXZpMs4Aze" +
        "qbnubMIV4BkD5qtuj4xGHxCU8elvIT4DbHafqxz/PKAK2ahPKX5+eRp65/gKGIjaxf6cHcrsWKiBUi//9wTcd2AAA1wABQgAPQAQ3QQACAgATIAJSNG6zm3UJTVpeJ2UxWfx8/Kh9bDlDXB2wtldga" +
        "qq/oBYFkyld166Gnxjc6z4ve8ny6kmAOCuUpspx/xC+BROmIVdTo4Wx+HM6xpxWVv10isxKLv8uFeUcx/mmy/v/lAUEsx6y3S92Y9olcwo1XCoVabWZMmtJE/dopPRIxzLSzsulTjyiGQGDio6mEEO" +
        "tHOOTf2BRShwAAAwAAAwAAAwJ+AtPIVTfX8Jr6TZHboWp3K3jwvwwdnx+Wf6R6DQAnVgYqVtcuiM0CxP4d9GAh4X+NtcXsBdr8j2nPwvvGkcC8ufO1XdMybhAK51JjegeHyDihwKWdR4yaWxFC8HmD" +
        "smceHhfnUujIMx+bW3WcDyfzOHWRJ65TsZlW4/bxtV42b/ez2vZbrxTIm/61naYzU242cmIl2Dm4gf2gkWbsaDoeLKNnNoCegAAAAABJSSoACAAAAAYAEgEDAAEAAAABAAAAGgEFAAEAAABWAAAAGw" +
        "EFAAEAAABeAAAAKAEDAAEAAAACAAAAEwIDAAEAAAABAAAAaYcEAAEAAABmAAAAAAAAADhjAADoAwAAOGMAAOgDAAAGAACQBwAEAAAAMDIxMAGRBwAEAAAAAQIDAACgBwAEAAAAMDEwMAGgAwABAAAA" +
        "//8AAAKgBAABAAAAQAEAAAOgBAABAAAA8AAAAAAAAAA=";

    public static byte[] Bytes => Convert.FromBase64String(Stored);

    /// <summary>With another size in its image spatial extents (<c>ispe</c>: version and flags, width, height).</summary>
    public static byte[] Sized(int width, int height)
    {
        var bytes = Bytes;
        var at = bytes.AsSpan().IndexOf("ispe"u8);
        BinaryPrimitives.WriteInt32BigEndian(bytes.AsSpan(at + 8), width);
        BinaryPrimitives.WriteInt32BigEndian(bytes.AsSpan(at + 12), height);
        return bytes;
    }

    /// <summary>
    /// With a turn (<c>irot</c>, quarters against the clock) or a mirror (<c>imir</c>) in place of the bit depths (<c>pixi</c>), which a
    /// decoder can do without; the association (<c>ipma</c>) of that third property is marked essential, as transforms must be.
    /// </summary>
    public static byte[] Turned(string box, byte value)
    {
        var bytes = Bytes;
        var at = bytes.AsSpan().IndexOf("pixi"u8);
        System.Text.Encoding.ASCII.GetBytes(box).CopyTo(bytes, at);
        bytes[at + 4] = value;
        var associations = bytes.AsSpan().IndexOf("ipma"u8);
        bytes[bytes.AsSpan(associations).IndexOf((byte)0x83) + associations] = 0x83;
        return bytes;
    }
}
