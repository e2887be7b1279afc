"""Independent readers of printed symbols: zxing-cpp always, OpenCV and zbar where installed.

None of them had a part in making the symbol, so what they read is what is on the paper.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache
from typing import Any

import numpy as np
import numpy.typing as npt
import zxingcpp
from PIL import Image

Grey = npt.NDArray[np.uint8]
Reader = Callable[[Grey], set[str]]


def grey(image: Image.Image | Grey) -> Grey:
    """An image as an array of grey levels, 0 black to 255 white."""
    if isinstance(image, Image.Image):
        return np.asarray(image.convert("L"), dtype=np.uint8)
    return image


def zxing(image: Grey) -> set[str]:
    """All QR texts that zxing-cpp finds."""
    found = zxingcpp.read_barcodes(image, formats=zxingcpp.BarcodeFormats(zxingcpp.BarcodeFormat.QRCode))
    return {result.text for result in found}


@lru_cache(maxsize=2)
def qr_readers(frames: int = 3) -> dict[str, Reader]:
    """The QR readers on this machine, by name; ``frames`` is how many tries OpenCV gets."""
    readers: dict[str, Reader] = {"zxing-cpp": zxing}
    try:
        import cv2

        readers["OpenCV"] = _opencv(cv2, frames)
    except ImportError:
        pass
    try:
        from pyzbar import pyzbar  # type: ignore[import-untyped]

        readers["zbar"] = _zbar(pyzbar)
    except ImportError:
        pass
    return readers


def _opencv(cv2: Any, frames: int) -> Reader:
    """OpenCV's detector stumbles over the exact pixels of a few sound symbols and reads them a little
    larger. A camera never gives the same pixels twice, so it gets up to three frames here too."""

    def read(image: Grey) -> set[str]:
        detector = cv2.QRCodeDetector()
        for scale in (1.0, 1.5, 2.3)[:frames]:
            frame = image
            if scale > 1:
                frame = cv2.resize(image, None, fx=scale, fy=scale, interpolation=cv2.INTER_LINEAR)
            text, *_ = detector.detectAndDecode(frame)
            if text:
                return {text}
            _, texts, *_ = detector.detectAndDecodeMulti(frame)
            found = {text for text in texts if text}
            if found:
                return found
        return set()

    return read


def _zbar(pyzbar: Any) -> Reader:
    def read(image: Grey) -> set[str]:
        found = pyzbar.decode(image, symbols=[pyzbar.ZBarSymbol.QRCODE])
        return {result.data.decode() for result in found}

    return read
