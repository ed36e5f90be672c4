using Lidoff.Browser.Tests.Fixtures;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>The disk runs full while somebody works: it is said, what was typed stays, and with room again it goes on.</summary>
public sealed class FullDiskTests(TheBrowser browser) : BrowserTest(browser)
{
    [Fact]
    public async Task A_full_disk_is_said_nothing_typed_is_lost_and_it_goes_on_once_there_is_room()
    {
        var disk = await SmallDisk.Start(Folder["workspace"]);
        if (disk is null) Assert.Skip("This machine lets nobody mount a small disk; the store's own tests fill a simulated one.");
        Keep(disk);
        var window = await Open(disk.Bench);
        // Uploads that cannot be stored are answered 422, which the console repeats.
        window.Watch.Forgive("status of 422");
        await window.Go("/");
        await window.Page.FillAsync("#new", "band");
        await window.Page.PressAsync("#new", "Enter");
        await window.Arrives("/dossiers/band/see");
        await window.Go("/dossiers/band/see");
        disk.Fill();

        var upload = window.Page.Locator("form[data-upload]");
        await upload.Locator("input[type=file]").SetInputFilesAsync(Files.Picture());
        await Assertions.Expect(upload.GetByRole(AriaRole.Status)).ToContainTextAsync("board.png: The disk is full: " + disk.Bench.Folder + " could not grow. Nothing of this step was stored; what was stored before is safe. Make room and try again.");
        await Assertions.Expect(window.Page.Locator("main")).ToContainTextAsync("No picture yet.");
        await window.Go("/dossiers/band/trace");
        await window.Page.Locator("#touch").PressSequentiallyAsync("U3.13 GND 0.3");
        await window.Page.PressAsync("#touch", "Enter");
        var said = window.Page.Locator("form.entry", new() { Has = window.Page.Locator("#touch") }).Locator(".fault");
        await Assertions.Expect(said).ToContainTextAsync("The disk is full: " + Path.Combine(disk.Bench.Folder, "lidoff.db") + " could not grow.");
        await Assertions.Expect(window.Page.Locator("#touch")).ToHaveValueAsync("U3.13 GND 0.3");
        await Shoot(window, "full");
        // Another dossier cannot begin either, and that is said at once.
        await window.Go("/");
        await upload.Locator("input[type=file]").SetInputFilesAsync(Files.Picture());
        await Assertions.Expect(upload.GetByRole(AriaRole.Status)).ToContainTextAsync("The disk is full: ");

        disk.Free();
        await window.Go("/dossiers/band/trace");
        await Assertions.Expect(window.Page.Locator("#touch")).ToHaveValueAsync("U3.13 GND 0.3");
        await window.Page.PressAsync("#touch", "Enter");
        await Assertions.Expect(window.Page.Locator("#touch")).ToHaveValueAsync("");
        await Assertions.Expect(window.Page.Locator("main")).ToContainTextAsync("U3.13");
        await window.Go("/dossiers/band/see");
        await upload.Locator("input[type=file]").SetInputFilesAsync(Files.Picture());
        await window.Arrives("/dossiers/band/see/*");
        await window.Go("/");
        await Assertions.Expect(window.Page.Locator("tbody tr")).ToHaveCountAsync(1);
    }
}
