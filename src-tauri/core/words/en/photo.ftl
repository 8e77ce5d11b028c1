# What a photo has to be, and what can go wrong when it is kept. Those with "takes" stand after "photo:".

takes-photo-picture = takes a JPEG, PNG or WebP picture; this file is not a picture, whatever its name says
takes-photo-whole = takes a whole picture; this file breaks off or is damaged. Take the photo again, or copy it again
takes-photo-pixels = takes at most { $megapixels } megapixels and { $side } pixels along a side; this picture has { $width } × { $height }. Set the camera to a smaller size
takes-photo-bytes = takes a file of at most { $megabytes } MB
takes-photo-kind = takes JPEG, PNG or WebP; this is { $kind }. Save or take it as JPEG
takes-photo-still = takes a still picture; this is an animation
takes-photo-screen-colours = takes a picture in screen colours; this one is in printing colours (CMYK)
takes-photo-usual-coding = takes a picture coded in the usual way; this one cannot be read here. Save or take it as plain JPEG
takes-finding-path = takes the path of a finding, such as answers.plug

error-no-photo-folder = No photos can be kept here: there is no folder for them. Nothing else was changed.
error-photo-storage = The photo could not be written or read: { $detail }. Nothing else was changed.
error-no-photo = There is no such photo.

# What speaks for taking a photo again.
photo-hint-blurred = It looks blurred: hold still, lean the phone on something, tap on what matters.
photo-hint-dark = It looks too dark: use the lamp, or turn the unit to the light.
photo-hint-glare = A part of it is burnt out by light: tilt the phone so that no lamp is mirrored.
