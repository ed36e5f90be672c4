using Lidoff.Bench.Data;
using Lidoff.Bench.Working;
using Lidoff.Evidence.Working;
using Lidoff.Seeing.Reading.Networks;

namespace Lidoff.Bench.Hosting;

/// <summary>What the workbench is given by the program that hosts it.</summary>
public sealed record BenchOptions
{
    /// <summary>What the page shows.</summary>
    public required IBenchData Data { get; init; }

    /// <summary>Fills a buffer with unguessable bytes; the program passes the system's generator, a test what it likes.</summary>
    public required Action<Span<byte>> Unguessable { get; init; }

    /// <summary>Name of the program's assembly: its lists of web files are named after it.</summary>
    public required string Program { get; init; }

    /// <summary>Folder with the program's web files. Default: the folder the program runs from.</summary>
    public string ContentRoot { get; init; } = AppContext.BaseDirectory;

    /// <summary>Port on 127.0.0.1; 0, the default, takes a free one.</summary>
    public int Port { get; init; }

    /// <summary>Thumbnails and tiles; null (default): pictures are listed without them.</summary>
    public ITileSource? Tiles { get; init; }

    /// <summary>Who may decode a picture; shared with <see cref="Tiles"/>. Default: seats of its own.</summary>
    public PictureSeats? Seats { get; init; }

    /// <summary>Where a stored file lies on the disk, by its hash; null for one that is not stored. Default: none is, and pictures of pictures cannot be made.</summary>
    public Func<string, string?> PathOf { get; init; } = _ => null;

    /// <summary>The networks that read marks, looked for when the first is read and again after a trouble. Default: those beside the program.</summary>
    public Func<IReadingNetworks> Networks { get; init; } = () => new OnnxNetworks(OnnxNetworks.FolderOf(AppContext.BaseDirectory));

    /// <summary>Where long work is listed and can be stopped. Default: a desk of its own.</summary>
    public JobDesk? Jobs { get; init; }

    /// <summary>Watched folders. Default: a desk of its own, which watches nothing until it is told to.</summary>
    public WatchDesk? Watches { get; init; }

    /// <summary>Recordings under way; null (default): none can be begun.</summary>
    public RecordingDesk? Recordings { get; init; }

    /// <summary>Clock. Default: the system's.</summary>
    public TimeProvider Time { get; init; } = TimeProvider.System;

    /// <summary>Takes warnings and errors, one line each, for stderr. Default: nobody.</summary>
    public Action<string> Log { get; init; } = _ => { };

    /// <summary>Path the browser is sent to after its login, from "/". Default: the list of dossiers.</summary>
    public string Start { get; init; } = "/";

    /// <summary>Most bytes of one uploaded file. Default 2 GiB.</summary>
    public long MostUploadBytes { get; init; } = 2L << 30;

    /// <summary>Most pages connected at once. Default 32.</summary>
    public int MostPages { get; init; } = 32;

    /// <summary>How often the store's heads are looked at while a page is open. Default: twice a second.</summary>
    public TimeSpan Look { get; init; } = TimeSpan.FromMilliseconds(500);
}
