"""The symbols a mark is read in, and those that are drawn."""

LETTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ"
READ = LETTERS + "-./+"                  # class i + 1 of the reader is READ[i]; class 0 is the blank
SMALL = "abcdefghijklmnopqrstuvwxyz"     # read as capitals
MUTE = "*#@&()$%=_\u00ae\u00a9\u00b0\u00b5"  # stand beside marks and are not read
DRAWN = READ + SMALL + MUTE
GAP = len(DRAWN)                         # a gap between words: advances, draws nothing, is not read
END = 255


def class_of(code):
    """The reader's class of a drawn symbol; 0 for what is not read."""
    if code < len(READ):
        return code + 1
    if code < len(READ) + len(SMALL):
        return READ.index(DRAWN[code].upper()) + 1
    return 0
