namespace Lidoff.Opening.Tests;
