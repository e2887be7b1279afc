// Photos made small on the phone: a picture as it comes from the camera takes most of a minute on a bad line.

const LONG_SIDE = 1280; // px
const QUALITY = 0.75;

// The form's values; a photo that the browser cannot make smaller goes as it is.
export async function valuesOf(form) {
  const values = {};
  for (const [name, value] of new FormData(form)) {
    if (!(value instanceof Blob)) values[name] = value;
    else if (value.size) values[name] = await smaller(value).catch(() => value);
  }
  return values;
}

async function smaller(file) {
  const picture = await createImageBitmap(file, { imageOrientation: "from-image" });
  const scale = Math.min(1, LONG_SIDE / Math.max(picture.width, picture.height));
  const canvas = Object.assign(document.createElement("canvas"), { width: Math.round(picture.width * scale), height: Math.round(picture.height * scale) });
  canvas.getContext("2d").drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  const small = await new Promise((done) => canvas.toBlob(done, "image/jpeg", QUALITY));
  return small && small.size < file.size ? small : file;
}
