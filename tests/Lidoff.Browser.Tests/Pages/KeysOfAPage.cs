using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Pages;

/// <summary>The keys that a page carries, shown or not yet shown.</summary>
internal static class KeysOfAPage
{
    /// <summary>
    /// Each key that two things of the page carry, or two of the frame around it, with both in words. A page's own key goes before the frame's, so one of each is no clash.
    /// </summary>
    public static Task<string[]> Clashes(IPage page) => page.EvaluateAsync<string[]>("""
        () => {
          const found = [];
          for (const inside of [true, false]) {
            const held = new Map();
            for (const el of document.querySelectorAll('[data-key]')) {
              if (Boolean(el.closest('main')) !== inside) continue;
              for (const key of el.dataset.key.split(' ')) held.set(key, [...(held.get(key) ?? []), el.dataset.says ?? el.textContent.trim().slice(0, 30)]);
            }
            for (const [key, all] of held) if (all.length > 1) found.push(`${key}: ${all.join(' / ')}`);
          }
          return found;
        }
        """);
}
