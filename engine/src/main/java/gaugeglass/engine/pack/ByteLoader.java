package gaugeglass.engine.pack;

import java.util.Map;

/**
 * A class loader that knows compiled classes besides its parent's, and before them: what an earlier build left on the class
 * path may bear the same names, which come from the package and not from the rules.
 */
public final class ByteLoader extends ClassLoader {
    private static final String CLASS = ".class";

    private final Map<String, byte[]> classes;

    /**
     * A loader.
     *
     * @param classes class files by path
     */
    public ByteLoader(Map<String, byte[]> classes, ClassLoader parent) {
        super(parent);
        this.classes = classes;
    }

    private static String path(String name) {
        return name.replace('.', '/') + CLASS;
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
        if (!classes.containsKey(path(name))) {
            return super.loadClass(name, resolve);
        }
        synchronized (getClassLoadingLock(name)) {
            Class<?> known = findLoadedClass(name);
            return known == null ? findClass(name) : known;
        }
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
        byte[] bytes = classes.get(path(name));
        if (bytes == null) {
            throw new ClassNotFoundException(name);
        }
        return defineClass(name, bytes, 0, bytes.length);
    }
}
