namespace Lidoff.Catalogue.Tests;
