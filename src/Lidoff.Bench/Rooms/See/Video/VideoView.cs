using Lidoff.Bench.Showing;
using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Rooms.See.Video;

/// <summary>One video with its moments and the pictures that were taken out of it.</summary>
/// <param name="Sha256">Its hash.</param>
/// <param name="FileName">Name it came under; hostile text; empty where the dossier has no such video.</param>
/// <param name="Bytes">Its length, bytes.</param>
/// <param name="Name">Short name of the recording, or the file's name.</param>
/// <param name="Says">What it is in a few words.</param>
/// <param name="Zoom">Zoom tag of a recording; may be empty. Hostile text, like the two after it.</param>
/// <param name="Light">How it was lit.</param>
/// <param name="Camera">Which camera.</param>
/// <param name="Moments">Its moments, in their order in time.</param>
/// <param name="Stills">Pictures taken out of it, likewise.</param>
/// <param name="Spots">Every designator of the dossier.</param>
public sealed record VideoView(
    string Sha256, string FileName, long Bytes, string Name, string Says, string Zoom, string Light, string Camera, ValueList<MomentRow> Moments, ValueList<StillRow> Stills, ValueList<string> Spots)
{
    /// <summary>The video as the dossier stands.</summary>
    public static VideoView Of(OpenDossier dossier, string sha256)
    {
        var view = dossier.Session.View;
        var files = view.Live<FileAdded>().Select(each => each.Value).ToList();
        if (files.FirstOrDefault(each => each.Sha256 == sha256 && VideoFiles.Is(each.Type)) is not { } file) return new(sha256, "", 0, "", "", "", "", "", [], [], []);
        var recording = VideoFiles.Recording(dossier, sha256);
        bool Here(string reference) => reference == recording?.Recording || (dossier.Model.Picture(reference) is { Found: true } found && found.Sha256 == sha256);
        return new(
            sha256, file.Name, file.Bytes, VideoFiles.NameOf(dossier, sha256), VideoFiles.Says(dossier, sha256),
            recording?.Zoom ?? "", recording?.Light ?? "", recording?.Camera ?? "",
            [.. view.Live<MomentSighting>().Where(each => Here(each.Value.Recording)).Select(each => new MomentRow(each.Id, each.Value.Second, each.Value.Spot, each.Value.Says)).OrderBy(each => each.Second)],
            [.. view.Live<StillSighting>().Select(each => each.Value).Where(each => each.Video == sha256).DistinctBy(each => each.File, StringComparer.Ordinal)
                .Select(each => new StillRow(each.File, files.FirstOrDefault(known => known.Sha256 == each.File)?.Name ?? "", each.Second)).Where(each => each.FileName.Length > 0).OrderBy(each => each.Second)],
            [.. SpotNames.Of(view)]);
    }
}
