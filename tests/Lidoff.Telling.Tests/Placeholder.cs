namespace Lidoff.Telling.Tests;
