using System.Globalization;
using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Rooms.See.Video;

/// <summary>Videos of a dossier, and the pictures that were taken out of them.</summary>
internal static class VideoFiles
{
    /// <summary>Whether a file is a video, by what it was recognised as.</summary>
    public static bool Is(string mediaType) => mediaType.StartsWith("video/", StringComparison.Ordinal);

    /// <summary>What was said of a video that was recorded here, last; null for one that came from elsewhere.</summary>
    public static RecordingSighting? Recording(OpenDossier dossier, string sha256) =>
        dossier.Session.View.Live<RecordingSighting>().Select(each => each.Value).LastOrDefault(each => each.File == sha256);

    /// <summary>What a video is called: the recording's short name, or its file's.</summary>
    public static string NameOf(OpenDossier dossier, string sha256) =>
        Recording(dossier, sha256)?.Recording ?? dossier.Session.View.Live<FileAdded>().Select(each => each.Value).FirstOrDefault(each => each.Sha256 == sha256)?.Name ?? "a video that is not here";

    /// <summary>Where a picture was taken out of a video: the video's hash and name, and the second; null where it was not.</summary>
    public static (string Sha256, string Name, double Second)? Origin(OpenDossier dossier, string picture) =>
        dossier.Session.View.Live<StillSighting>().Select(each => each.Value).LastOrDefault(each => each.File == picture) is { } still ? (still.Video, NameOf(dossier, still.Video), still.Second) : null;

    /// <summary>"1:02.345".</summary>
    public static string Time(double second) => string.Create(CultureInfo.InvariantCulture, $"{(int)(second / 60)}:{second % 60:00.000}");

    /// <summary>What a video is in a few words: "recording V1 with voice".</summary>
    public static string Says(OpenDossier dossier, string sha256) => Recording(dossier, sha256) is { } recording
        ? $"recording {recording.Recording} {(recording.Voice ? "with" : "without")} voice{(recording.BrokeOff ? ", broke off" : "")}"
        : "video";
}
