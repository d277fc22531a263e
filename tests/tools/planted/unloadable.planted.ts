// A test file that fails before any of its tests stands.
throw new Error("planted: this file does not load")
