using System.Collections.Concurrent;
using System.Globalization;
using System.IO.Compression;
using Lidoff.Bench.Data;
using Lidoff.Evidence.Store;
using Lidoff.Evidence.Working;
using Lidoff.Numbers.Failing;
using Lidoff.Telling.Documents;
using Lidoff.Telling.Dossiers;
using Lidoff.Telling.Reporting;

namespace Lidoff.Bench.Working;

/// <summary>
/// Makes reports as zips, by jobs that say how far they are and can be stopped, and keeps the newest of each dossier until it was
/// taken or the workbench ends. The dossier is held only while the document is built, not while pictures are copied.
/// </summary>
public sealed class ReportShelf(IBenchData data, JobDesk desk) : IDisposable
{
    // The earliest a zip can tell: the same dossier gives the same bytes on any day.
    private static readonly DateTimeOffset Always = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    private readonly ConcurrentDictionary<int, MadeReport> made = new();
    private int started;

    /// <summary>Starts making a report in the given forms (see <see cref="ReportFolder.Forms"/>).</summary>
    public Job<MadeReport> Make(string dossier, IReadOnlyList<string> forms)
    {
        var number = Interlocked.Increment(ref started);
        return desk.Start<MadeReport>("report of " + dossier, report => Task.FromResult(Made(number, dossier, forms, report)));
    }

    /// <summary>A report that is ready; null when there is none of that number in that dossier.</summary>
    public MadeReport? Find(string dossier, int number) => made.TryGetValue(number, out var found) && found.Dossier == dossier ? found : null;

    /// <summary>Calls back when any job moves, from the job's thread, until disposed.</summary>
    public IDisposable Listen(Action moved) => desk.Listen(_ => moved());

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (var report in made.Values) File.Delete(report.Path);
    }

    private Outcome<MadeReport> Made(int number, string dossier, IReadOnlyList<string> forms, IJobReport report)
    {
        report.Say(0, 0, "writing the document");
        var remarks = new List<string>();
        if (data.View(dossier, open => new Draft(open, remarks)) is not { } draft) return StoreSentences.NoDossier(dossier, []);
        Directory.CreateDirectory(draft.Folder);
        var path = Path.Combine(draft.Folder, string.Create(CultureInfo.InvariantCulture, $"report-{Environment.ProcessId}-{number}.zip"));
        try
        {
            using (var zip = new ZipArchive(new FileStream(path, FileMode.Create, FileAccess.Write), ZipArchiveMode.Create))
            {
                foreach (var form in forms) Put(zip, "report." + form, ReportFolder.Bytes(draft.Document, form));
                for (var i = 0; i < draft.Pictures.Count; i++)
                {
                    report.Stop.ThrowIfCancellationRequested();
                    report.Say(i, draft.Pictures.Count, "copying pictures");
                    using var copy = new MemoryStream();
                    var shared = ReportFolder.Copy(draft.Files, draft.Pictures[i], copy);
                    if (shared.Ok) Put(zip, draft.Pictures[i].File, copy.ToArray());
                    else remarks.AddRange(shared.Faults.Select(fault => fault.Say));
                }
            }
        }
        catch
        {
            File.Delete(path);
            throw;
        }

        var ready = new MadeReport(number, dossier, path, new FileInfo(path).Length, draft.Pictures.Count, [.. remarks]);
        foreach (var old in made.Values.Where(old => old.Dossier == dossier && made.TryRemove(old.Number, out _))) File.Delete(old.Path);
        return made[number] = ready;
    }

    private static void Put(ZipArchive zip, string name, byte[] bytes)
    {
        var entry = zip.CreateEntry(name, CompressionLevel.Optimal);
        entry.LastWriteTime = Always;
        using var stream = entry.Open();
        stream.Write(bytes);
    }

    private sealed class Draft
    {
        public Draft(OpenDossier open, List<string> remarks)
        {
            Pictures = ReportFolder.Shown(open, remarks.Add);
            Document = ReportBuilder.Build(open.Session.View, open.Model, Pictures, OpenDossier.Program);
            Files = open.Workspace.Files;
            Folder = open.Workspace.CacheFolder;
        }

        public IReadOnlyList<ReportPicture> Pictures { get; }

        public Document Document { get; }

        public FileVault Files { get; }

        public string Folder { get; }
    }
}
