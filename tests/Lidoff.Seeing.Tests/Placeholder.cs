namespace Lidoff.Seeing.Tests;
